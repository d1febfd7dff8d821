package boilwright.numerics;

/**
 * A quantity whose change of sign is an event. Its value is asked for at the ends of steps and at check points inside
 * them; only when the sign has changed is the time of the crossing sought on the dense solution.
 *
 * <p>When a value jumps at a stop point, or at a restart that another event asked for, and the jump changes its sign in
 * the watched direction, that counts as a crossing at that time. A jump at the restart that this event asked for itself
 * does not.
 */
public interface EventFunction {
    /** A number by which the owner knows the event. */
    int id();

    /** Which changes of sign count. */
    Direction direction();

    /**
     * The watched value.
     *
     * @param t time, s
     * @param y state; not to be changed or kept
     */
    double value(double t, double[] y);

    /**
     * Tells the owner that the event happened.
     *
     * @param t time, s: at the crossing or at most the event tolerance after it
     * @param y state then; not to be changed or kept
     * @param rising whether the value went from negative to positive
     * @return how to go on
     */
    Action occurred(double t, double[] y, boolean rising);

    /** How integration goes on after an event. */
    public enum Action {
        /** Nothing has changed: the step in hand stays valid. */
        CONTINUE,
        /** A mode has changed, and with it the derivative: start again from the event with the state as it is. */
        RESTART,
        /** Integration ends at the event. */
        STOP
    }

    /** Which changes of sign of a watched value count as an event. */
    public enum Direction {
        /** From negative to positive. */
        RISING,
        /** From positive to negative. */
        FALLING,
        /** Either way. */
        BOTH;

        boolean watches(boolean rising) {
            return this == BOTH || (this == RISING) == rising;
        }
    }
}
