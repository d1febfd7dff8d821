package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import java.util.List;

/**
 * How long until the pump may be left, and in which order?
 *
 * @param asked the rig
 */
public record CooldownQuestion(Asked asked) implements Question<RunAnswer> {
    @Override
    public RunAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        RunResult run = RunSimulator.cooldown(asked.rig(), asked.tables(), asked.values(), cancel, progress);
        List<Margin> margins = Margins.worstFirst(RunMargins.of(asked, run, Moment.STOP));
        return RunAnswer.of(asked, run, Verdict.ofCooldown(run), margins, check, true);
    }
}
