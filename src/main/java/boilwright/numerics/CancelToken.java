package boilwright.numerics;

import boilwright.errors.CancelledException;

/** A request to stop, raised on one thread and looked at on another. It can't be taken back. */
public final class CancelToken {
    private volatile boolean cancelled;

    /** Asks the computation that holds this token to stop soon. */
    public void cancel() {
        cancelled = true;
    }

    /** Whether a stop was asked for. */
    public boolean isCancelled() {
        return cancelled;
    }

    /**
     * Goes on quietly unless a stop was asked for.
     *
     * @throws CancelledException when it was
     */
    public void check() throws CancelledException {
        if (cancelled) {
            throw new CancelledException();
        }
    }
}
