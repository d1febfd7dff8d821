package boilwright.files;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files written whole or not at all: the content goes to a new file beside the target, is forced to the disk and then takes
 * the target's place in one move. A reader sees the old file or the new one, never a part.
 */
public final class AtomicFile {
    private AtomicFile() {}

    /**
     * Writes one file, replacing what was there.
     *
     * @throws OutputNotWrittenException when it can't be written; what was there is unchanged
     */
    public static void write(Path target, byte[] content) {
        writeAll(Map.of(target, content));
    }

    /**
     * Writes several files. None takes its place before all are safely on the disk.
     *
     * @param contents what to write where, in the order in which they take their places
     * @throws OutputNotWrittenException when one can't be written
     */
    public static void writeAll(Map<Path, byte[]> contents) {
        Map<Path, Path> staged = new LinkedHashMap<>();
        try {
            for (Map.Entry<Path, byte[]> entry : contents.entrySet()) {
                Path place = place(entry.getKey());
                try {
                    Path beside = newBeside(place);
                    staged.put(beside, place);
                    fill(beside, entry.getValue());
                } catch (IOException e) {
                    throw notWritten(entry.getKey(), e);
                }
            }
            for (Map.Entry<Path, Path> entry : staged.entrySet()) {
                try {
                    move(entry.getKey(), entry.getValue());
                } catch (IOException e) {
                    throw notWritten(entry.getValue(), e);
                }
            }
        } finally {
            staged.keySet().forEach(AtomicFile::discard);
        }
    }

    /**
     * Finds out whether a file could be written, without touching what is there.
     *
     * @throws OutputNotWrittenException when it could not
     */
    public static void requireWritable(Path target) {
        Path place = place(target);
        try {
            discard(newBeside(place));
        } catch (IOException e) {
            throw notWritten(target, e);
        }
    }

    /** Where the bytes go: behind a symbolic link, and only onto plain files. */
    private static Path place(Path target) {
        Path place = target.toAbsolutePath();
        try {
            if (Files.exists(place)) {
                place = place.toRealPath();
                if (Files.isDirectory(place)) {
                    throw notWritten(target, "it is a folder");
                }
                if (!Files.isRegularFile(place)) {
                    throw notWritten(target, "it is not a plain file");
                }
                if (!Files.isWritable(place)) {
                    throw notWritten(target, "it may not be changed");
                }
            }
        } catch (IOException e) {
            throw notWritten(target, e);
        }
        return place;
    }

    private static Path newBeside(Path place) throws IOException {
        Path folder = place.getParent();
        if (folder == null || place.getFileName() == null) {
            throw new IOException("it names no file");
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new IOException("its folder is a file");
        }
        // Not createTempFile: that would make the finished file readable by its owner alone.
        for (int number = 1; ; number++) {
            Path beside =
                    folder.resolve(".boilwright-" + ProcessHandle.current().pid() + "-" + number + ".part");
            if (Files.notExists(beside)) {
                return Files.createFile(beside);
            }
        }
    }

    private static void fill(Path file, byte[] content) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(content);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // The failure that led here is the one worth telling; a stray part file is named so that it can be
            // recognised.
            file.toFile().deleteOnExit();
        }
    }

    private static OutputNotWrittenException notWritten(Path target, String why) {
        return new OutputNotWrittenException(Message.of(MessageKey.OUTPUT_NOT_WRITTEN, target.toString(), why), null);
    }

    private static OutputNotWrittenException notWritten(Path target, IOException e) {
        String why;
        if (e instanceof NoSuchFileException) {
            why = "its folder does not exist";
        } else if (e instanceof AccessDeniedException) {
            why = "its folder may not be written to";
        } else {
            why = IoReason.of(e);
        }
        return new OutputNotWrittenException(Message.of(MessageKey.OUTPUT_NOT_WRITTEN, target.toString(), why), e);
    }
}
