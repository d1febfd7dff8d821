package boilwright.companion;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;

/**
 * The recorder of a run. Every line is appended and forced to the disk on a thread of its own as soon as it is handed over, so
 * that a crash of the program, at whatever moment, loses no line that was written and leaves at most one torn line behind the
 * last whole one. Where the disk refuses, the listener hears at once; all lines of the run stay in memory, in order, and go to
 * the same place when it can be written again, or to another one.
 */
public final class RunLog implements AutoCloseable {
    private static final long LAST_WAIT_S = 5;

    /** Hears what becomes of the lines, on the recorder's thread. */
    public interface Listener {
        /**
         * Lines are safe.
         *
         * @param file where
         * @param lines lines of the file that are on the disk, counted from its first
         */
        void written(Path file, int lines);

        /** Lines can't be written now. */
        void trouble(Trouble trouble);
    }

    /**
     * A log that goes on.
     *
     * @param log its recorder
     * @param record what was in it
     */
    public record Resumed(RunLog log, RunRecord record) {}

    private final LogDisk disk;
    private final InstantSource now;
    private final Listener listener;
    private final ExecutorService writer = Executors.newSingleThreadExecutor(RunLog::named);

    // All below belongs to the writer's thread.
    private final List<byte[]> lines = new ArrayList<>();
    private volatile Path file;
    private LogPlace place;
    /** Whether the file is one that was there before. */
    private boolean existed;
    /** How many of the lines are on the disk, and their bytes. */
    private int safe;

    private long safeBytes;

    private RunLog(Path file, LogDisk disk, InstantSource now, Listener listener) {
        this.file = file;
        this.disk = disk;
        this.now = now;
        this.listener = listener;
    }

    /**
     * Begins a log in a new file. Returns at once; what stands against the file is told to the listener.
     *
     * @param file must not be there yet; its folder must
     * @param head what the run is
     * @param now for the lines that the recorder itself writes
     * @param listener hears what becomes of the lines
     */
    public static RunLog begin(Path file, LogHead head, InstantSource now, Listener listener) {
        return begin(file, head, now, listener, LogDisk.SYSTEM);
    }

    static RunLog begin(Path file, LogHead head, InstantSource now, Listener listener, LogDisk disk) {
        RunLog log = new RunLog(file, disk, now, listener);
        log.writer.execute(() -> {
            log.lines.add(LogLine.header());
            head.entries().forEach(entry -> log.lines.add(LogLine.of(entry)));
            log.drain();
        });
        return log;
    }

    /**
     * Opens a log that is there and goes on behind its last whole line; a torn one is cut off, and its text kept in a note. A file
     * that may be read but not written is in trouble from the beginning, as any other that can't be written.
     *
     * @throws InputRefusedException when it can't be read, is no run log, is being written by somebody else, or is the log of
     *     another plan; the file is unchanged then
     */
    public static Resumed resume(Path file, LogHead plan, InstantSource now, Listener listener) {
        return resume(file, plan, now, listener, LogDisk.SYSTEM);
    }

    static Resumed resume(Path file, LogHead plan, InstantSource now, Listener listener, LogDisk disk) {
        LogPlace place = null;
        RunRecord record;
        boolean taken = false;
        try {
            place = opened(file, disk);
            record = place == null ? RunLogReader.read(file) : RunLogReader.read(file, place.content());
            if (!record.head().suits(plan)) {
                throw new InputRefusedException(Message.of(
                        MessageKey.RUN_LOG_OTHER_PLAN,
                        file.toString(),
                        record.head().inWords(),
                        plan.inWords()));
            }
            taken = true;
        } catch (LogDisk.InUse e) {
            throw new InputRefusedException(Message.of(MessageKey.RUN_LOG_IN_USE, file.toString()));
        } catch (IOException e) {
            throw new InputRefusedException(Message.of(MessageKey.RUN_LOG_UNREADABLE, file.toString(), IoReason.of(e)));
        } finally {
            if (!taken) {
                leave(place);
            }
        }
        RunLog log = new RunLog(file, disk, now, listener);
        log.goOn(place, record);
        return new Resumed(log, record);
    }

    /** The file for reading and writing; null when it may only be read. */
    private static LogPlace opened(Path file, LogDisk disk) throws IOException {
        try {
            return disk.open(file);
        } catch (AccessDeniedException e) {
            return null;
        } catch (NoSuchFileException | LogDisk.InUse e) {
            throw e;
        } catch (FileSystemException e) {
            // a read-only file system says so in words of its own
            if (Files.isReadable(file) && Files.isRegularFile(file)) {
                return null;
            }
            throw e;
        }
    }

    private void goOn(LogPlace opened, RunRecord record) {
        writer.execute(() -> {
            place = opened;
            existed = true;
            lines.addAll(record.lines());
            safe = lines.size();
            safeBytes = record.wholeLength();
            if (record.torn().length > 0) {
                lines.add(LogLine.of(LogEntry.of(
                        now.instant(),
                        LogKind.NOTE,
                        "torn-line",
                        CompanionText.LOG_TORN.say(
                                Integer.toString(record.torn().length), RunLogReader.text(record.torn())))));
            }
            lines.add(LogLine.of(
                    LogEntry.of(now.instant(), LogKind.RESUME, "program", boilwright.files.ProgramVersion.current())));
            drain();
        });
    }

    /** Hands a line over. Returns at once. */
    public void record(LogEntry entry) {
        byte[] line = LogLine.of(entry);
        writer.execute(() -> {
            lines.add(line);
            drain();
        });
    }

    /** Tries again to write what waits; does nothing when nothing does. */
    public void retry() {
        writer.execute(() -> {
            if (safe < lines.size()) {
                drain();
            }
        });
    }

    /**
     * Writes the whole run to another new file and goes on there. When that can't be done either, the listener hears why and
     * nothing changes.
     */
    public void continueIn(Path other) {
        writer.execute(() -> move(other));
    }

    /** Writes what can be written and lets go of the file; no line can be handed over after it. */
    @Override
    public void close() {
        writer.execute(() -> {
            leave(place);
            place = null;
        });
        writer.shutdown();
        try {
            writer.awaitTermination(LAST_WAIT_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static Thread named(Runnable work) {
        Thread made = new Thread(work, "boilwright-log");
        made.setDaemon(true);
        return made;
    }

    private void drain() {
        try {
            if (place != null && !place.isThere()) {
                // written on, it would be a file that nobody can find any more
                leave(place);
                place = null;
                existed = false;
                safe = 0;
                safeBytes = 0;
            }
            if (place == null) {
                place = existed ? disk.open(file) : disk.create(file);
            }
            if (place.length() < safeBytes) {
                throw new IOException("somebody else has shortened it");
            }
            // what stands behind the last safe line is half a line: of a crash, or of a disk that was full
            place.cut(safeBytes);
            byte[] waiting = joined(lines.subList(safe, lines.size()));
            place.append(waiting);
            place.force();
            existed = true;
            safe = lines.size();
            safeBytes += waiting.length;
            listener.written(file, safe);
        } catch (IOException e) {
            tell(file, e);
        }
    }

    private void tell(Path where, IOException e) {
        int kept = lines.size() - safe;
        String waiting = CompanionText.LOG_LINES.say(Integer.toString(kept));
        listener.trouble(new Trouble(
                where, Message.of(MessageKey.RUN_LOG_NOT_WRITTEN, where.toString(), reason(where, e), waiting), kept));
    }

    private static String reason(Path where, IOException e) {
        if (e instanceof FileAlreadyExistsException) {
            return "there is a file of that name already";
        }
        Path folder = where.toAbsolutePath().getParent();
        if (e instanceof NoSuchFileException && folder != null && !Files.isDirectory(folder)) {
            return "its folder is not there";
        }
        return IoReason.of(e);
    }

    private void move(Path other) {
        LogPlace next = null;
        try {
            next = disk.create(other);
            byte[] note = LogLine.of(LogEntry.of(
                    now.instant(), LogKind.NOTE, "moved", CompanionText.LOG_MOVED_FROM.say(file.toString())));
            byte[] all = joined(lines);
            next.append(all);
            next.append(note);
            next.force();
            farewell(other);
            leave(place);
            lines.add(note);
            place = next;
            existed = true;
            file = other;
            safe = lines.size();
            safeBytes = all.length + note.length;
            listener.written(file, safe);
        } catch (IOException e) {
            boolean made = next != null;
            leave(next);
            if (made) {
                removeOwn(other);
            }
            tell(other, e);
        }
    }

    /** The file that is left says where its run went on, if it can be written at all: it is in trouble already. */
    private void farewell(Path other) {
        if (place == null) {
            return;
        }
        try {
            place.cut(safeBytes);
            place.append(LogLine.of(LogEntry.of(
                    now.instant(), LogKind.END, "moved", CompanionText.LOG_MOVED_TO.say(other.toString()))));
            place.force();
        } catch (IOException e) {
            leave(place);
            place = null;
        }
    }

    /** Takes a half-written file away again; it was made here a moment ago. */
    private static void removeOwn(Path other) {
        try {
            Files.deleteIfExists(other);
        } catch (IOException e) {
            other.toFile().deleteOnExit();
        }
    }

    private static void leave(LogPlace place) {
        try {
            if (place != null) {
                place.close();
            }
        } catch (IOException e) {
            // every line that counts was forced before or is still in memory
            return;
        }
    }

    private static byte[] joined(List<byte[]> parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        parts.forEach(all::writeBytes);
        return all.toByteArray();
    }

    /**
     * Why the log can't be written now. Its lines are kept, in order, until it can.
     *
     * @param file the file that should have been written
     * @param message the trouble in a whole sentence
     * @param kept how many lines wait
     */
    public record Trouble(Path file, Message message, int kept) {}
}
