package boilwright.numerics;

/** Someone who wants to know how far a computation is. Called on the computing thread; should return at once. */
@FunctionalInterface
public interface ProgressSink {
    /** Listens to nothing. */
    ProgressSink NONE = (fraction, phase) -> {};

    /**
     * @param fraction share of this phase that is done, 0 to 1, never falling within a phase
     * @param phase which phase
     */
    void progress(double fraction, String phase);
}
