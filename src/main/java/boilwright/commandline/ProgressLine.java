package boilwright.commandline;

import boilwright.numerics.ProgressSink;
import java.io.PrintStream;
import java.util.Locale;
import java.util.function.LongSupplier;

/** One line that tells a waiting person how far a computation is; appears only when the wait is noticeable. */
final class ProgressLine implements ProgressSink, AutoCloseable {
    private static final long PATIENCE_NS = 1_000_000_000L;
    private static final long BETWEEN_NS = 200_000_000L;
    private static final int WIDTH = 60;

    private final PrintStream err;
    private final LongSupplier clock;
    private long nextNs;
    private boolean shown;

    ProgressLine(PrintStream err, LongSupplier nanoClock) {
        this.err = err;
        this.clock = nanoClock;
        this.nextNs = nanoClock.getAsLong() + PATIENCE_NS;
    }

    @Override
    public void progress(double fraction, String phase) {
        long now = clock.getAsLong();
        if (now - nextNs >= 0) {
            String text = String.format(Locale.ROOT, "%3.0f %%  %s", 100 * fraction, phase);
            err.print("\r" + padded(text));
            err.flush();
            shown = true;
            nextNs = now + BETWEEN_NS;
        }
    }

    /** Takes the line away. */
    @Override
    public void close() {
        if (shown) {
            err.print("\r" + padded("") + "\r");
            err.flush();
        }
    }

    private static String padded(String text) {
        return text.length() >= WIDTH ? text.substring(0, WIDTH) : text + " ".repeat(WIDTH - text.length());
    }
}
