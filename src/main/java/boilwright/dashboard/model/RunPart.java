package boilwright.dashboard.model;

/** The three parts of the axis of time. */
public enum RunPart {
    /** From the cold pump until it is at rest; the clock starts with the backing pump. */
    WARMUP,
    /** At rest: as long as one likes, drawn as a stretch of fixed width. */
    REST,
    /** After the heat is off; the clock starts again. */
    COOLDOWN
}
