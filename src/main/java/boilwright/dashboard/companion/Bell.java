package boilwright.dashboard.companion;

import java.util.Optional;

/** What makes itself heard when something is overdue or past its limit. */
@FunctionalInterface
public interface Bell {
    /**
     * Rings once. Returns when it has rung; never on the window's thread.
     *
     * @return why nothing can be heard, as half a sentence; empty when it was heard
     */
    Optional<String> ring();
}
