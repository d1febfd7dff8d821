package boilwright.companion;

/**
 * What came of something a person did.
 *
 * @param kind whether it was done
 * @param words whole sentences
 */
public record Outcome(Kind kind, String words) {
    /** Whether it was done. */
    public enum Kind {
        /** Done and recorded. */
        DONE,
        /** Not done yet: doing it once more, all the same, does it. */
        WARNED,
        /** Not done. */
        REFUSED
    }

    static Outcome done(String words) {
        return new Outcome(Kind.DONE, words);
    }

    static Outcome warned(String words) {
        return new Outcome(Kind.WARNED, words);
    }

    static Outcome refused(String words) {
        return new Outcome(Kind.REFUSED, words);
    }

    /** Whether it was done. */
    public boolean isDone() {
        return kind == Kind.DONE;
    }
}
