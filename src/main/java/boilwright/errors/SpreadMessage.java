package boilwright.errors;

/** The sentences of uncertainty runs. The comment of each lists its values. */
public enum SpreadMessage implements MessageId {
    /** {0} id given. */
    SPREAD_RANGE_UNKNOWN(1),
    /** {0} id, {1} low, {2} high. */
    SPREAD_RANGE_REVERSED(3),
    /** {0} id, {1} low, {2} high, {3} least and {4} greatest accepted. */
    SPREAD_RANGE_OUTSIDE(5),
    /** {0} id. */
    SPREAD_RANGE_TWICE(1),
    /** {0} option, {1} what it was given, {2} fewest, {3} most. */
    SPREAD_NUMBER_OUTSIDE(4),
    /** {0} text given. */
    SPREAD_RANGE_FORM(1),
    /** {0} samples, {1} threads, {2} how long they take. */
    SPREAD_TAKES_LONG(3),
    /** {0} samples, {1} most. */
    SPREAD_BANDS_TOO_MANY(2);

    private final int argumentCount;

    SpreadMessage(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    @Override
    public int argumentCount() {
        return argumentCount;
    }
}
