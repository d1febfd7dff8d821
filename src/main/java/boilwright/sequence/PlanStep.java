package boilwright.sequence;

import java.util.OptionalDouble;

/**
 * One step of a plan.
 *
 * @param action what is done or looked at
 * @param moment when, by the simulated run
 * @param level what the heat is set to; off for every step but those that turn heat on
 * @param latestS time on the same clock after which the step is overdue, s; empty when it just follows the one before
 * @param words what people read
 */
public record PlanStep(Action action, Moment moment, HeatLevel level, OptionalDouble latestS, Words words) {
    /**
     * What people read of a step; every part but the first may be empty.
     *
     * @param what what to do
     * @param hold what must be seen before the next step
     * @param otherwise what to do when that does not come in time
     * @param why why it is done here
     * @param caution what can hurt someone
     */
    public record Words(String what, String hold, String otherwise, String why, String caution) {
        /** No words: a step of a file that was edited by hand. */
        static final Words NONE = new Words("", "", "", "", "");
    }

    /** Whether the step is to be waited for. */
    public boolean isHold() {
        return !words.hold().isEmpty();
    }
}
