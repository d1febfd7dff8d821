package boilwright.errors;

/** A computation that was stopped because the person who asked for it no longer wants it. */
public class CancelledException extends RuntimeException {
    public CancelledException() {
        super("cancelled", null, false, false);
    }
}
