package boilwright.commandline;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Questions;
import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;

/** The answers that the model gives. */
enum ModelAnswers implements AnswerSource {
    INSTANCE;

    @Override
    public CheckAnswer check(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.check(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public RunAnswer warmup(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.warmup(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public RunAnswer cooldown(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.cooldown(rig, fluid, dataVersion, cancel, progress);
    }
}
