package boilwright.choice;

import boilwright.rig.HeatSource;
import boilwright.rig.HeatSource.Contact;
import boilwright.rig.HeatSource.HeatPath;
import boilwright.rig.OfferedSource;
import boilwright.rig.Rig;
import boilwright.rig.SourceKind;
import boilwright.rig.SourceKind.Figures;
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
        if (source.touches()
                && !source.body().orElseThrow().contact().fits(rig.boiler().material())) {
            return misfit(source.kind(), glass);
        }
        return switch (source.path()) {
            case OIL -> {
                boolean has = rig.heatSource().path() == HeatPath.OIL;
                yield new SourceFit(Optional.of(source), has ? "" : ChoiceText.FIT_IMMERSED.say());
            }
            case BASE, NOWHERE -> new SourceFit(Optional.of(source.under(rig.boiler())), "");
            case CONTACT, FLAME -> new SourceFit(Optional.of(source.under(rig.boiler())), condition(rig, source));
        };
    }

    private static SourceFit misfit(SourceKind kind, boolean glass) {
        if (!kind.has(Figures.CONTACT)) {
            return refused(ChoiceText.FIT_CLAMP_ON_GLASS);
        }
        return refused(glass ? ChoiceText.FIT_METAL_CONTACT : ChoiceText.FIT_GLASS_CONTACT);
    }

    /** A flat plate touches a flat bottom; of a bottom that no plate stands under now the shape is not known. */
    private static String condition(Rig rig, HeatSource source) {
        boolean small = source.body()
                .filter(b -> b.contact() == Contact.WRAPPED)
                .filter(b -> b.areaM2() < SMALL_MANTLE * rig.boiler().heatedAreaM2())
                .isPresent();
        if (small) {
            return ChoiceText.FIT_SMALL_MANTLE.say();
        }
        Optional<Contact> contact = source.contact();
        Optional<Contact> present = rig.heatSource().contact();
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
