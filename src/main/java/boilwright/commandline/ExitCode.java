package boilwright.commandline;

/** What the number that the program ends with means. */
final class ExitCode {
    /** All margins hold or are tight; a record is decided. */
    static final int HOLDS = 0;
    /** Some margin fails; a record is undecided. */
    static final int FAILS = 1;
    /** The input or the way the program was called was refused. */
    static final int REFUSED = 2;
    /** The computation gave no answer that the program stands behind: an energy balance that does not close. */
    static final int NOT_CLOSED = 3;
    /** An output could not be written. */
    static final int NOT_WRITTEN = 4;
    /** A fault of the program. */
    static final int FAULT = 5;
    /** Stopped by the person, as shells count it. */
    static final int CANCELLED = 130;

    private ExitCode() {}
}
