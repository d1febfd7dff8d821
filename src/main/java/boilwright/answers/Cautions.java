package boilwright.answers;

import boilwright.fluid.WorkingFluid;
import boilwright.rig.ElementKind;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import java.util.ArrayList;
import java.util.List;

/** What can hurt someone at this rig, one sentence each: what can happen and what to do. */
public final class Cautions {

    private Cautions() {}

    /** Where the hand is that a caution is for. */
    public enum Place {
        /** Turning the heat on or up. */
        HEAT,
        /** Turning water on or off. */
        WATER,
        /** Letting air in, opening, leaving. */
        OPENING,
        /** The rig as a whole. */
        ANYWHERE
    }

    /**
     * One caution.
     *
     * @param place where it belongs
     * @param sentence what can happen and what to do
     */
    public record Caution(Place place, String sentence) {}

    static List<String> of(Rig rig, WorkingFluid fluid, double hottestK, boolean cooling) {
        List<String> list = new ArrayList<>();
        if (cooling) {
            list.add(AnswerText.CAUTION_AFTER_HEAT.say());
        }
        placed(rig, fluid, hottestK).stream().map(Caution::sentence).forEach(list::add);
        return list;
    }

    /** The caution that a fluid itself asks for, whatever rig it is in. */
    public static Caution ofFluid(WorkingFluid fluid) {
        if (fluid.isToxicVapour()) {
            return new Caution(Place.ANYWHERE, AnswerText.CAUTION_MERCURY.say());
        }
        if (fluid.airAdmissionLimit().isEmpty()) {
            return new Caution(Place.OPENING, AnswerText.CAUTION_AIR_UNKNOWN.say(fluid.title()));
        }
        String limit = Say.temperature(fluid.airAdmissionLimit().getAsDouble());
        AnswerText text = fluid.resistsOxidation() ? AnswerText.CAUTION_AIR_SPOILS : AnswerText.CAUTION_AIR_BURNS;
        return new Caution(Place.OPENING, text.say(fluid.title(), limit));
    }

    /**
     * The cautions of a rig, in the order in which a report gives them.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param hottestK hottest outside face, K
     */
    public static List<Caution> placed(Rig rig, WorkingFluid fluid, double hottestK) {
        List<Caution> list = new ArrayList<>();
        list.add(ofFluid(fluid));
        if (rig.heatSource().isFlame()) {
            list.add(new Caution(Place.HEAT, AnswerText.CAUTION_FLAME.say()));
        }
        if (Margins.isGlass(rig)) {
            list.add(new Caution(Place.HEAT, AnswerText.CAUTION_GLASS.say()));
        }
        boolean jacket = rig.cooling().elements().stream().anyMatch(e -> e.kind() == ElementKind.JACKET);
        if (jacket) {
            list.add(new Caution(Place.WATER, AnswerText.CAUTION_JACKET.say()));
        } else if (!rig.cooling().elements().isEmpty()) {
            list.add(new Caution(Place.WATER, AnswerText.CAUTION_COIL.say()));
        }
        if (hottestK > TypicalValues.TOUCH_K) {
            list.add(new Caution(Place.HEAT, AnswerText.CAUTION_TOUCH.say(Say.temperature(hottestK))));
        }
        list.add(new Caution(Place.HEAT, AnswerText.CAUTION_BACKING.say()));
        list.add(new Caution(Place.ANYWHERE, AnswerText.CAUTION_CODES.say()));
        return list;
    }
}
