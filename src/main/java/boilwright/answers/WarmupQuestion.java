package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import java.util.List;

/**
 * How long until each jet lights?
 *
 * @param asked the rig
 */
public record WarmupQuestion(Asked asked) implements Question<RunAnswer> {
    @Override
    public RunAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        RunResult run = RunSimulator.warmup(asked.rig(), asked.tables(), asked.values(), cancel, progress);
        List<Margin> margins = Margins.worstFirst(RunMargins.ofWarmup(asked, run));
        return RunAnswer.of(asked, run, Verdict.ofWarmup(asked.rig(), run, margins), margins, false);
    }
}
