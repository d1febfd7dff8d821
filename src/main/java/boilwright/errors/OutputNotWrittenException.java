package boilwright.errors;

/** A file or picture that was asked for could not be made. What was there before is unchanged. */
public class OutputNotWrittenException extends RuntimeException {
    private final transient Message reason;

    /**
     * @param reason which output, and why
     * @param cause the system's own account; may be null
     */
    public OutputNotWrittenException(Message reason, Throwable cause) {
        super(reason.text(), cause);
        this.reason = reason;
    }

    /** Which output, and why. */
    public Message reason() {
        return reason;
    }
}
