package boilwright.dashboard.companion;

import boilwright.companion.LogEntry;
import boilwright.companion.LogHead;
import boilwright.companion.RunLog;
import boilwright.companion.RunLogs;
import boilwright.companion.RunRecord;
import boilwright.errors.InputRefusedException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * Keeps the log of the run that a window shows. A new file is begun with the first line, so that a window that was only looked
 * at leaves none. All methods are called on the window's thread; files are touched on others.
 */
final class LogKeeper {
    /**
     * How the log stands.
     *
     * @param file where it is; empty before its first line
     * @param lines lines on the disk
     * @param trouble why it can't be written now
     */
    record Standing(Optional<Path> file, int lines, Optional<RunLog.Trouble> trouble) {
        static final Standing NOTHING = new Standing(Optional.empty(), 0, Optional.empty());
    }

    private final LogHead head;
    private final Path folder;
    private final InstantSource now;
    private final ExecutorService files = Executors.newSingleThreadExecutor(LogKeeper::named);
    private final ReadOnlyObjectWrapper<Standing> standing =
            new ReadOnlyObjectWrapper<>(this, "standing", Standing.NOTHING);
    private RunLog log;

    LogKeeper(LogHead head, Path folder, InstantSource now) {
        this.head = head;
        this.folder = folder;
        this.now = now;
    }

    private static Thread named(Runnable work) {
        Thread made = new Thread(work, "boilwright-logs");
        made.setDaemon(true);
        return made;
    }

    ReadOnlyObjectProperty<Standing> standingProperty() {
        return standing.getReadOnlyProperty();
    }

    /** Makes the folder and looks for runs of this plan that were not ended, the last one first. */
    void look(Consumer<List<RunRecord>> found) {
        files.execute(() -> {
            try {
                Files.createDirectories(folder);
            } catch (IOException e) {
                // the recorder tells it with the first line that can't be written
                Platform.runLater(() -> found.accept(List.of()));
                return;
            }
            List<RunRecord> unfinished = RunLogs.unfinished(folder, head);
            Platform.runLater(() -> found.accept(unfinished));
        });
    }

    /** Takes up a log; the refusal is for people. */
    void resume(Path file, Consumer<RunRecord> taken, Consumer<String> refused) {
        files.execute(() -> {
            try {
                RunLog.Resumed resumed = RunLog.resume(file, head, now, new Ear());
                Platform.runLater(() -> {
                    log = resumed.log();
                    taken.accept(resumed.record());
                });
            } catch (InputRefusedException e) {
                Platform.runLater(() -> refused.accept(e.getMessage()));
            }
        });
    }

    /** Records a line. */
    void record(LogEntry entry) {
        if (log == null) {
            Path file = RunLogs.freshName(folder, head.rig(), now.instant());
            log = RunLog.begin(file, head, now, new Ear());
        }
        log.record(entry);
    }

    void retry() {
        if (log != null) {
            log.retry();
        }
    }

    void continueIn(Path other) {
        if (log != null) {
            log.continueIn(other);
        }
    }

    /** Lets go of the log, in the background; what was handed over is on the disk already wherever that can be. */
    void close() {
        files.shutdown();
        RunLog last = log;
        if (last != null) {
            new Thread(last::close, "boilwright-log-end").start();
        }
    }

    /** Hears the recorder and tells the window's thread. */
    private final class Ear implements RunLog.Listener {
        @Override
        public void written(Path file, int lines) {
            Platform.runLater(() -> standing.set(new Standing(Optional.of(file), lines, Optional.empty())));
        }

        @Override
        public void trouble(RunLog.Trouble trouble) {
            Platform.runLater(() -> {
                Standing before = standing.get();
                standing.set(new Standing(
                        before.file().or(() -> Optional.of(trouble.file())), before.lines(), Optional.of(trouble)));
            });
        }
    }
}
