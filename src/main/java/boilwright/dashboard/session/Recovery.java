package boilwright.dashboard.session;

import boilwright.errors.OutputNotWrittenException;
import boilwright.files.AtomicFile;
import boilwright.rig.Rig;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Copies of unsaved rigs, kept against a crash. Every window has a copy of its own, with a lock that the system takes away
 * when the program ends in whatever way: a copy without a living lock was left by a crash.
 */
public final class Recovery {
    private static final String RIG = ".json";
    private static final String FROM = ".from";
    private static final String LOCK = ".lock";
    private static final int MOST = 1000;

    /** A window's own place among the copies; keeps nothing where there is no folder. */
    private final Optional<Path> place;

    private final FileChannel lock;

    private Recovery(Optional<Path> place, FileChannel lock) {
        this.place = place;
        this.lock = lock;
    }

    /**
     * A copy that was left by a crash.
     *
     * @param rig the file that holds the rig
     * @param from the file the rig had been read from or saved to; empty for none
     */
    public record Left(Path rig, Optional<Path> from) {
        /** Takes the copy away: it was saved, or nobody wants it. */
        public void discard() {
            delete(rig);
            delete(beside(rig, FROM));
            delete(beside(rig, LOCK));
        }
    }

    /**
     * Takes a place among the copies.
     *
     * @param state the folder of {@link StateFolder}; empty: nothing is kept
     */
    public static Recovery in(Optional<Path> state) {
        if (state.isEmpty()) {
            return new Recovery(Optional.empty(), null);
        }
        Path folder = state.get().resolve("recovery");
        try {
            Files.createDirectories(folder);
            for (int number = 1; number <= MOST; number++) {
                Path lock = folder.resolve("rig-" + number + LOCK);
                if (Files.exists(beside(lock, RIG))) {
                    continue; // a copy whose lock is gone is still somebody's work
                }
                try {
                    FileChannel channel =
                            FileChannel.open(lock, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                    channel.lock();
                    return new Recovery(Optional.of(beside(lock, RIG)), channel);
                } catch (FileAlreadyExistsException taken) {
                    // Another window's, living or crashed; the next number may be free.
                }
            }
        } catch (IOException e) {
            // As with no folder at all: the person can work, only a crash would lose what was not saved.
        }
        return new Recovery(Optional.empty(), null);
    }

    /** The copies that crashes left, in the order of their names. */
    public List<Left> left() {
        List<Left> left = new ArrayList<>();
        if (place.isEmpty()) {
            return left;
        }
        try (Stream<Path> files = Files.list(place.get().getParent())) {
            for (Path rig :
                    files.filter(file -> file.toString().endsWith(RIG)).sorted().toList()) {
                if (!rig.equals(place.get()) && !isAlive(beside(rig, LOCK))) {
                    left.add(new Left(rig, from(rig)));
                }
            }
        } catch (IOException e) {
            return left;
        }
        return left;
    }

    /**
     * Keeps a copy of this rig.
     *
     * @param from the file that it belongs to
     * @return false when it could not be kept
     */
    public synchronized boolean keep(Rig rig, Optional<Path> from) {
        if (place.isEmpty()) {
            return false;
        }
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        String origin = from.map(file -> file.toAbsolutePath().toString()).orElse("");
        contents.put(beside(place.get(), FROM), origin.getBytes(StandardCharsets.UTF_8));
        contents.put(place.get(), RigWriter.write(rig).getBytes(StandardCharsets.UTF_8));
        try {
            AtomicFile.writeAll(contents);
            return true;
        } catch (OutputNotWrittenException e) {
            return false;
        }
    }

    /** Takes the copy away: the rig is saved or no longer wanted. */
    public synchronized void drop() {
        place.ifPresent(rig -> {
            delete(rig);
            delete(beside(rig, FROM));
        });
    }

    /** Gives the place up. A copy that was not dropped stays and is offered at the next start. */
    public synchronized void close() {
        if (place.isEmpty()) {
            return;
        }
        try {
            lock.close();
        } catch (IOException e) {
            // The system closes it with the program.
        }
        if (Files.notExists(place.get())) {
            delete(beside(place.get(), LOCK));
        }
    }

    private static boolean isAlive(Path lock) {
        try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE);
                FileLock got = channel.tryLock()) {
            return got == null;
        } catch (OverlappingFileLockException e) {
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static Optional<Path> from(Path rig) {
        try {
            String text = Files.readString(beside(rig, FROM));
            return text.isBlank() ? Optional.empty() : Optional.of(Path.of(text));
        } catch (IOException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static Path beside(Path file, String ending) {
        String name = file.getFileName().toString();
        return file.resolveSibling(name.substring(0, name.lastIndexOf('.')) + ending);
    }

    private static void delete(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            file.toFile().deleteOnExit();
        }
    }
}
