package boilwright.spread;

/** What is asked of every sample. */
public enum SpreadScope {
    /** The margins of the rig at rest. */
    REST("rest", true, false),
    /** The margins of a whole check and the events of the warm-up. */
    CHECK("check", true, true),
    /** The events of the warm-up and what it comes near to on its way. */
    WARMUP("warmup", false, true);

    private final String id;
    private final boolean rest;
    private final boolean time;

    SpreadScope(String id, boolean rest, boolean time) {
        this.id = id;
        this.rest = rest;
        this.time = time;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }
}
