package boilwright.numerics;

/** Which changes of sign of a watched value count as an event. */
public enum EventDirection {
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
