package boilwright.dashboard.work;

import boilwright.answers.CheckAnswer;
import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import java.util.Optional;

/**
 * What the window shows of one rig.
 *
 * @param check the check of the rig
 * @param fluid its fluid
 * @param cooldown its cool-down; empty until that is computed
 */
public record RigAnswer(CheckAnswer check, WorkingFluid fluid, Optional<RunAnswer> cooldown) {
    /** The same answer with the cool-down. */
    public RigAnswer with(RunAnswer run) {
        return new RigAnswer(check, fluid, Optional.of(run));
    }
}
