package boilwright.companion;

import boilwright.sequence.Clock;
import boilwright.sequence.PlanStep;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A run at one moment.
 *
 * @param clock the clock that counts; empty before the first was started
 * @param clockS time on it, s
 * @param steps every step of the plan
 * @param current the step to do now; empty when none is left
 * @param remaining what is still to come and when; empty when nothing is
 * @param why how these times come about, whole sentences
 * @param readings in the order in which they were taken
 * @param alarms in the order in which they came
 * @param ended whether the run was ended
 */
public record RunView(
        Optional<Clock> clock,
        double clockS,
        List<StepView> steps,
        Optional<StepView> current,
        List<Ahead> remaining,
        String why,
        List<ReadingView> readings,
        List<AlarmView> alarms,
        boolean ended) {
    public RunView {
        steps = List.copyOf(steps);
        remaining = List.copyOf(remaining);
        readings = List.copyOf(readings);
        alarms = List.copyOf(alarms);
    }

    /**
     * A step.
     *
     * @param number from 1
     * @param step the step of the plan
     * @param doneS when it was done, s on its clock; empty when it was not, or before that clock ran
     * @param done whether it was done
     * @param expectedS when it is to be expected by what was seen, s on its clock; empty when it is done or its clock does not run
     * @param due whether that time has come
     * @param overdue whether it is overdue by the plan
     */
    public record StepView(
            int number,
            PlanStep step,
            boolean done,
            OptionalDouble doneS,
            OptionalDouble expectedS,
            boolean due,
            boolean overdue) {
        /** How much later than computed it was done, s; negative for earlier. */
        public OptionalDouble lateS() {
            return doneS.isPresent()
                    ? OptionalDouble.of(doneS.getAsDouble() - step.moment().atS())
                    : doneS;
        }
    }

    /**
     * Something to come.
     *
     * @param words what, as it goes on after "until": "every jet is full"
     * @param leftS time until then, s, never negative
     */
    public record Ahead(String words, double leftS) {}

    /**
     * A reading.
     *
     * @param kind what was read
     * @param clock the clock that ran; empty for none
     * @param clockS time on it, s
     * @param value as read, SI
     * @param computed as computed for that time, SI; empty where nothing is
     */
    public record ReadingView(
            ReadingKind kind, Optional<Clock> clock, OptionalDouble clockS, double value, OptionalDouble computed) {}

    /**
     * An alarm.
     *
     * @param sentence what is overdue or past its limit
     * @param acknowledged whether a person took note of it
     */
    public record AlarmView(String sentence, boolean acknowledged) {}

    /** Whether nothing but time has passed since another view. */
    public boolean isLike(RunView other) {
        return clock.equals(other.clock)
                && ended == other.ended
                && steps.equals(other.steps)
                && current.equals(other.current)
                && readings.equals(other.readings)
                && alarms.equals(other.alarms);
    }
}
