package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.RunResult;
import java.util.List;

/**
 * How long until each jet lights?
 *
 * @param asked the rig
 */
public record WarmupQuestion(Asked asked) implements Question<RunAnswer> {
    @Override
    public RunAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        RunResult run = check.warmup();
        List<Margin> margins = Margins.worstFirst(check.findings().stream()
                .filter(m -> m.moment() == Moment.WARMUP)
                .toList());
        return RunAnswer.of(asked, run, Verdict.ofWarmup(asked.rig(), run, margins), margins, check, false);
    }
}
