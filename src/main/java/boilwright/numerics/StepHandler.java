package boilwright.numerics;

/** Someone who records the solution. Calls come in the order of time, between the events' own calls. */
public interface StepHandler {
    /** Records nothing. */
    StepHandler NONE = (solution, from, to) -> {};

    /**
     * A stretch of the solution on which no mode changes. Successive stretches join without gap; an event's owner is
     * told of the event after the stretch that ends there.
     *
     * @param solution the step that holds the stretch; valid during this call only
     * @param from start of the stretch, s
     * @param to end of the stretch, s, later than {@code from}
     */
    void stretch(StepInterpolant solution, double from, double to);

    /**
     * Integration starts here, or starts again after a stop point or an event: derivatives may have jumped.
     *
     * @param t time, s
     * @param y state; not to be changed or kept
     */
    default void started(double t, double[] y) {}
}
