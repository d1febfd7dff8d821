package boilwright.commandline;

import boilwright.answers.CheckAnswer;
import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;

/** Who answers the questions of the commands: the model, or in tests someone who misbehaves on purpose. */
interface AnswerSource {
    CheckAnswer check(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    RunAnswer warmup(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    RunAnswer cooldown(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);
}
