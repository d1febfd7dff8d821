package boilwright.errors;

/** The model could not give an answer that it stands behind: no root, no convergence, a balance that does not close. */
public class ComputationException extends RuntimeException {
    private final transient Message reason;

    /** @param reason what happened, with the values at which it happened */
    public ComputationException(Message reason) {
        super(reason.text());
        this.reason = reason;
    }

    /** What happened, with the values at which it happened. */
    public Message reason() {
        return reason;
    }
}
