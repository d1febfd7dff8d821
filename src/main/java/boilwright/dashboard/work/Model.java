package boilwright.dashboard.work;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Questions;
import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;

/** Who answers the window's questions: the model, or in tests someone slower or less reliable. */
public interface Model {
    /** The model itself. */
    Model ITSELF = new Model() {
        @Override
        public CheckAnswer check(
                Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
            return Questions.check(rig, fluid, dataVersion, cancel, progress);
        }

        @Override
        public RunAnswer cooldown(
                Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
            return Questions.cooldown(rig, fluid, dataVersion, cancel, progress);
        }
    };

    /** As {@link Questions#check}. */
    CheckAnswer check(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    /** As {@link Questions#cooldown}. */
    RunAnswer cooldown(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);
}
