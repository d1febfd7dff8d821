package boilwright.errors;

/** The sentences about run logs and what is entered during a run. The comment of each lists its values. */
public enum CompanionMessage implements MessageId {
    /** {0} file, {1} why. */
    RUN_LOG_UNREADABLE(2),
    /** {0} file, {1} most. */
    RUN_LOG_TOO_LARGE(2),
    /** {0} file, {1} line, {2} column, {3} what was found, {4} what is accepted. */
    RUN_LOG_REFUSED(5),
    /** {0} file. */
    RUN_LOG_IN_USE(1),
    /** {0} file, {1} rig and variant in it, {2} rig and variant of the plan. */
    RUN_LOG_OTHER_PLAN(3),
    /** {0} file, {1} why, {2} number of lines kept. */
    RUN_LOG_NOT_WRITTEN(3),
    /** {0} quantity, {1} what is wrong with the text. */
    RUN_READING_REFUSED(2),
    /** {0} quantity, {1} found, {2} least, {3} greatest. */
    RUN_READING_RANGE(4),
    /** {0} quantity, {1} found, {2} computed for now, {3} likely meaning. */
    RUN_READING_SLIP(4);

    private final int argumentCount;

    CompanionMessage(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    @Override
    public int argumentCount() {
        return argumentCount;
    }
}
