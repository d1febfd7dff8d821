package boilwright.choice;

import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.Susceptor;
import boilwright.rig.OfferedSource;
import boilwright.rig.Rig;
import java.util.Optional;

/**
 * A source put under a boiler: it touches no more than the boiler's base, and some sources do not go with some boilers.
 *
 * @param source the source as it sits there; empty when it does not go with this boiler
 * @param words why it does not, or on what condition it does, a whole sentence; may be empty
 */
record SourceFit(Optional<HeatSource> source, String words) {
    /** Share of the heated area below which a mantle is that of a smaller flask. */
    private static final double SMALL_MANTLE = 0.75;

    static SourceFit of(Rig rig, OfferedSource offered) {
        HeatSource source = offered.source();
        boolean glass = rig.boiler().material().isGlass();
        if (source instanceof HeatSource.ClampedHeater && glass) {
            return refused(ChoiceText.FIT_CLAMP_ON_GLASS);
        }
        if (source instanceof HeatSource.ImmersedElement) {
            boolean has = rig.heatSource() instanceof HeatSource.ImmersedElement;
            return new SourceFit(Optional.of(source), has ? "" : ChoiceText.FIT_IMMERSED.say());
        }
        if (source instanceof HeatSource.Induction i && i.susceptor() != Susceptor.PLATE) {
            boolean ferrous = rig.boiler().material().isFerrous();
            return new SourceFit(Optional.of(bare(i, ferrous ? Susceptor.FERROUS_BASE : Susceptor.NONE, rig)), "");
        }
        Optional<Contact> contact = contact(source);
        if (contact.isPresent() && (contact.get() == Contact.MACHINED_METAL) == glass) {
            return refused(glass ? ChoiceText.FIT_METAL_CONTACT : ChoiceText.FIT_GLASS_CONTACT);
        }
        if (source instanceof HeatSource.HeatingMantle m
                && m.wrappedAreaM2() < SMALL_MANTLE * rig.boiler().heatedAreaM2()) {
            return new SourceFit(Optional.of(source), ChoiceText.FIT_SMALL_MANTLE.say());
        }
        return new SourceFit(Optional.of(seated(source, rig)), condition(rig, contact));
    }

    /** Only what the boiler's base covers touches. */
    private static HeatSource seated(HeatSource source, Rig rig) {
        double base = rig.boiler().heatedAreaM2();
        return SourceChange.touches(source) && SourceChange.areaOf(source) > base
                ? SourceChange.area(source, base)
                : source;
    }

    private static HeatSource bare(HeatSource.Induction i, Susceptor susceptor, Rig rig) {
        return new HeatSource.Induction(
                i.ratedPowerW(),
                susceptor,
                i.efficiency(),
                i.contact(),
                Math.min(i.contactAreaM2(), rig.boiler().heatedAreaM2()),
                i.contactConductance(),
                i.heatCapacity(),
                i.limitK(),
                i.lossAreaM2(),
                i.lossEmissivity());
    }

    private static Optional<Contact> contact(HeatSource source) {
        if (source instanceof HeatSource.ContactPlate p) {
            return Optional.of(p.contact());
        }
        return source instanceof HeatSource.Induction i ? Optional.of(i.contact()) : Optional.empty();
    }

    /** A flat plate touches a flat bottom; of a bottom that no plate stands under now the shape is not known. */
    private static String condition(Rig rig, Optional<Contact> contact) {
        Optional<Contact> present = contact(rig.heatSource());
        if (contact.equals(Optional.of(Contact.FLAT_GLASS)) && !present.equals(contact)) {
            return ChoiceText.FIT_FLAT_BOTTOM.say();
        }
        return contact.equals(Optional.of(Contact.DOMED_GLASS)) && present.equals(Optional.of(Contact.FLAT_GLASS))
                ? ChoiceText.FIT_DOMED_BOTTOM.say()
                : "";
    }

    private static SourceFit refused(ChoiceText why) {
        return new SourceFit(Optional.empty(), why.say());
    }
}
