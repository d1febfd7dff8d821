package boilwright.companion;

import boilwright.errors.Sentences;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a line of a run log tells. Names in files are the constants' names in lower case. */
public enum LogKind {
    /** Something about the run as a whole; the first lines of a log. */
    BEGIN,
    /** A step of the plan, with its computed time and, as its value, the time at which it is overdue. */
    PLAN,
    /** A clock was started, or its start was taken back. */
    CLOCK,
    /** A step was done. */
    TICK,
    /** The tick of a step was taken back. */
    UNTICK,
    /** A value that was read off. */
    READING,
    /** Something that was waited for was seen; also does the step that waits for it. */
    SIGHT,
    /** Something is overdue or past its limit. */
    ALARM,
    /** A person has taken note of an alarm. */
    ACKNOWLEDGED,
    /** Words. */
    NOTE,
    /** The log was opened again. */
    RESUME,
    /** The run is over. */
    END;

    /** Name in files. */
    public String id() {
        return Sentences.bundleKey(this);
    }

    static Optional<LogKind> of(String id) {
        return Arrays.stream(values()).filter(k -> k.id().equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(LogKind::id).toList();
    }
}
