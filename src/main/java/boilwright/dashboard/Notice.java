package boilwright.dashboard;

import java.util.List;

/**
 * Something the window has to tell or to ask, shown in the window itself.
 *
 * @param kind how serious it is
 * @param title one sentence
 * @param lines more sentences, such as every fault of a file; may be none
 * @param choices what the person can do about it; one more, to let it be, is always there
 */
record Notice(Kind kind, String title, List<String> lines, List<Choice> choices) {
    Notice {
        lines = List.copyOf(lines);
        choices = List.copyOf(choices);
    }

    /** Whether it is one sentence that asks for nothing. */
    boolean isShort() {
        return kind == Kind.TELL && lines.isEmpty() && choices.isEmpty();
    }

    /** How serious a notice is. */
    enum Kind {
        TELL,
        ASK,
        REFUSED
    }

    /**
     * One way out.
     *
     * @param title what its button says
     * @param what what then happens
     */
    record Choice(String title, Runnable what) {}
}
