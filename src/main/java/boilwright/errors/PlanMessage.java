package boilwright.errors;

/** The sentences about plans that are read or asked for. The comment of each lists its values. */
public enum PlanMessage implements MessageId {
    /** {0} file, {1} why. */
    PLAN_UNREADABLE(2),
    /** {0} file, {1} most. */
    PLAN_TOO_LARGE(2),
    /** {0} file, {1} line and column, {2} what the reader says. */
    PLAN_NOT_JSON(3),
    /** {0} file, {1} place in it, {2} what was found, {3} what is accepted. */
    PLAN_FIELD(4),
    /** {0} file, {1} variant in it, {2} variant asked for. */
    PLAN_OTHER_VARIANT(3),
    /** {0} option, {1} found, {2} accepted. */
    PLAN_OPTION(3),
    /** {0} file that was not written. */
    PLAN_NO_SHEET(1);

    private final int argumentCount;

    PlanMessage(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    @Override
    public int argumentCount() {
        return argumentCount;
    }
}
