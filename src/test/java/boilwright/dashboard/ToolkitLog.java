package boilwright.dashboard;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/** Everything that the toolkit warns of while a test runs, style sheets above all. */
public final class ToolkitLog extends Handler implements AutoCloseable {
    private final Logger logger = Logger.getLogger("javafx");
    private final List<String> warnings = new CopyOnWriteArrayList<>();

    /** Begins to listen. */
    public ToolkitLog() {
        logger.addHandler(this);
    }

    /** What was warned of so far. */
    public List<String> warnings() {
        return warnings;
    }

    @Override
    public void publish(LogRecord entry) {
        if (entry.getLevel().intValue() >= Level.WARNING.intValue()
                && !String.valueOf(entry.getMessage()).contains("Unsupported JavaFX configuration")) {
            warnings.add(entry.getLoggerName() + ": " + entry.getMessage());
        }
    }

    @Override
    public void flush() {
        // Nothing is held back.
    }

    @Override
    public void close() {
        logger.removeHandler(this);
    }
}
