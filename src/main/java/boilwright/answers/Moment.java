package boilwright.answers;

/** What of a rig's day a margin is judged over. */
public enum Moment {
    /** The rig at rest with its heat on. */
    REST("rest", AnswerText.MOMENT_REST),
    /** From cold until nothing moves any more. */
    WARMUP("warm-up", AnswerText.MOMENT_WARMUP),
    /** From heat-on over heat-off until water and backing pump may stop: for what warms or runs out with time. */
    SESSION("session", AnswerText.MOMENT_SESSION),
    /** From rest with the heat off until everything is safe to touch. */
    STOP("stop", AnswerText.MOMENT_STOP);

    private final String id;
    private final AnswerText words;

    Moment(String id, AnswerText words) {
        this.id = id;
        this.words = words;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }

    /** How a sentence says when: "at rest". */
    public String words() {
        return words.say();
    }
}
