package boilwright.companion;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Remembers what a recorder told. */
final class LogWatch implements RunLog.Listener {
    final List<RunLog.Trouble> troubles = new CopyOnWriteArrayList<>();
    volatile int lines;
    volatile Path file;

    @Override
    public void written(Path where, int count) {
        file = where;
        lines = count;
    }

    @Override
    public void trouble(RunLog.Trouble trouble) {
        troubles.add(trouble);
    }
}
