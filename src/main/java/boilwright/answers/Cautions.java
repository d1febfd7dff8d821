package boilwright.answers;

import boilwright.fluid.WorkingFluid;
import boilwright.rig.Cooling;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import java.util.ArrayList;
import java.util.List;

/** What can hurt someone at this rig, one sentence each: what can happen and what to do. */
final class Cautions {
    private Cautions() {}

    static List<String> of(Rig rig, WorkingFluid fluid, double hottestK, boolean cooling) {
        List<String> list = new ArrayList<>();
        if (cooling) {
            list.add(AnswerText.CAUTION_AFTER_HEAT.say());
        }
        if (fluid.isToxicVapour()) {
            list.add(AnswerText.CAUTION_MERCURY.say());
        } else if (fluid.airAdmissionLimit().isEmpty()) {
            list.add(AnswerText.CAUTION_AIR_UNKNOWN.say(fluid.title()));
        } else {
            String limit = Say.temperature(fluid.airAdmissionLimit().getAsDouble());
            AnswerText text = fluid.resistsOxidation() ? AnswerText.CAUTION_AIR_SPOILS : AnswerText.CAUTION_AIR_BURNS;
            list.add(text.say(fluid.title(), limit));
        }
        if (rig.heatSource() instanceof HeatSource.GasBurner) {
            list.add(AnswerText.CAUTION_FLAME.say());
        }
        if (Margins.isGlass(rig)) {
            list.add(AnswerText.CAUTION_GLASS.say());
        }
        boolean jacket = rig.cooling().elements().stream().anyMatch(e -> e instanceof Cooling.Jacket);
        if (jacket) {
            list.add(AnswerText.CAUTION_JACKET.say());
        } else if (!rig.cooling().elements().isEmpty()) {
            list.add(AnswerText.CAUTION_COIL.say());
        }
        if (hottestK > 333.15) {
            list.add(AnswerText.CAUTION_TOUCH.say(Say.temperature(hottestK)));
        }
        list.add(AnswerText.CAUTION_BACKING.say());
        list.add(AnswerText.CAUTION_CODES.say());
        return list;
    }
}
