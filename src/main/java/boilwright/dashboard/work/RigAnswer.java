package boilwright.dashboard.work;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.RunAnswer;
import boilwright.fluid.WorkingFluid;
import java.util.Optional;

/**
 * What the window shows of one rig.
 *
 * @param check the check of the rig
 * @param cooldown its cool-down; empty until that is computed
 */
public record RigAnswer(CheckAnswer check, Optional<RunAnswer> cooldown) {
    /** What was asked. */
    public Asked asked() {
        return check.asked();
    }

    /** The rig's fluid. */
    public WorkingFluid fluid() {
        return asked().fluid();
    }

    /** The same answer with the cool-down. */
    public RigAnswer with(RunAnswer run) {
        return new RigAnswer(check, Optional.of(run));
    }
}
