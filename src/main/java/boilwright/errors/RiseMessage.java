package boilwright.errors;

/**
 * The sentences of the pressure-rise test: what is wrong with a record, or with an option of its command. The place is the file
 * with line and column as far as they are known, or the option. The comment of each lists its values.
 */
public enum RiseMessage implements MessageId {
    /** {0} place, {1} why, as half a sentence. */
    RISE_FILE_UNREADABLE(2),
    /** {0} place, {1} greatest size. */
    RISE_FILE_TOO_LARGE(2),
    /** {0} place. */
    RISE_FILE_EMPTY(1),
    /** {0} place, {1} what was found. */
    RISE_FILE_NOT_TEXT(2),
    /** {0} place. */
    RISE_FILE_BROKEN(1),
    /** {0} place, {1} number of further faults. */
    RISE_MORE_FAULTS(2),
    /** {0} place. */
    RISE_HEADER_MISSING(1),
    /** {0} place, {1} quantity, {2} examples of its name, {3} names found. */
    RISE_COLUMN_MISSING(4),
    /** {0} place, {1} quantity, {2} and {3} the names. */
    RISE_COLUMN_DOUBLED(4),
    /** {0} place, {1} name, {2} examples with a unit. */
    RISE_COLUMN_WITHOUT_UNIT(3),
    /** {0} place, {1} name, {2} what is wrong with its unit. */
    RISE_COLUMN_UNIT(3),
    /** {0} place, {1} cells found, {2} columns. */
    RISE_ROW_LENGTH(3),
    /** {0} place. */
    RISE_CELL_BLANK(1),
    /** {0} place, {1} found. */
    RISE_CELL_TEXT(2),
    /** {0} place, {1} found. */
    RISE_CELL_CLOCK(2),
    /** {0} place, {1} found. */
    RISE_CELL_WITH_UNIT(2),
    /** {0} place, {1} what is wrong with the number. */
    RISE_CELL_REFUSED(2),
    /** {0} place, {1} what is doubtful about the number, {2} word to accept it with. */
    RISE_CELL_SLIP(3),
    /** {0} place, {1} found. */
    RISE_PRESSURE_NOT_POSITIVE(2),
    /** {0} place, {1} found. */
    RISE_PRESSURE_ABOVE_AIR(2),
    /** {0} place, {1} found, {2} time before. */
    RISE_TIME_BACK(3),
    /** {0} place, {1} number found, {2} fewest. */
    RISE_TOO_FEW_ROWS(3),
    /** {0} place, {1} most. */
    RISE_TOO_MANY(2),
    /** {0} place, {1} column, {2} length of the record, {3} likely meaning, {4} what is usual. */
    RISE_TIME_SLIP(5),
    /** {0} place, {1} column, {2} first reading, {3} likely meaning, {4} what is usual. */
    RISE_PRESSURE_SLIP(5),
    /** {0} place, {1} what is wrong with the quantity. */
    RISE_VOLUME_REFUSED(2),
    /** {0} place, {1} what is doubtful about the quantity. */
    RISE_VOLUME_DOUBTFUL(2),
    /** {0} place, {1} found, {2} likely meaning, {3} what is usual. */
    RISE_VOLUME_SLIP(4),
    /** {0} place, {1} found, {2} least, {3} greatest. */
    RISE_VOLUME_RANGE(4),
    /** {0} place, {1} accepted words. */
    RISE_ACCEPT_UNKNOWN(2);

    private final int argumentCount;

    RiseMessage(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    @Override
    public int argumentCount() {
        return argumentCount;
    }
}
