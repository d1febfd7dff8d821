package boilwright.sequence;

/** What a step's time is counted from. */
public enum Clock {
    /** The moment at which the backing pump of the cold rig is switched on. */
    FROM_COLD("from-cold"),
    /** The moment at which a hot rig is stopped or paused. */
    FROM_HOT("from-hot");

    private final String id;

    Clock(String id) {
        this.id = id;
    }

    /** Name in files. */
    public String id() {
        return id;
    }
}
