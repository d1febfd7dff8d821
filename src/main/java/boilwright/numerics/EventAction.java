package boilwright.numerics;

/** How integration goes on after an event. */
public enum EventAction {
    /** Nothing has changed: the step in hand stays valid. */
    CONTINUE,
    /** A mode has changed, and with it the derivative: start again from the event with the state as it is. */
    RESTART,
    /** Integration ends at the event. */
    STOP
}
