package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;

/**
 * What flows, what it carries, what it needs: the cooling side of one rig.
 *
 * @param asked the rig, with the length of a session for the ice
 */
public record WaterQuestion(Asked asked) implements Question<WaterAnswer> {
    @Override
    public WaterAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        return new CoolingSide(check, new WaterSizing(asked, WaterAnswer.fullJets(check) != check.steady(), cancel))
                .answer(asked.rig().sessionS());
    }

    /** Highest temperature, K, at which water should leave a rig's circuit: its own limit, or the usual one. */
    public static double outletLimitK(Rig rig) {
        return rig.limits().waterOutK().orElse(TypicalValues.WATER_OUT_LIMIT_K);
    }
}
