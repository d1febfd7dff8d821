package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Rig;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writes rig files. What was written reads back as an equal rig. */
public final class RigWriter {
    private RigWriter() {}

    /** The text of a rig's file: canonical order, quantities with units, every default written out. */
    public static String write(Rig rig) {
        return JsonLayout.text(RigTree.of(rig));
    }

    /**
     * Saves a rig. The file is either the old one or the whole new one, even when power fails meanwhile: a file with a
     * temporary name beside it is forced to disk and then moved into place.
     *
     * @param rig the rig
     * @param file where to; replaced when it exists
     * @throws InputRefusedException when it cannot be written; the old file is left as it was
     */
    public static void save(Rig rig, Path file) {
        byte[] bytes = write(rig).getBytes(StandardCharsets.UTF_8);
        // A link stays a link: what it points to is replaced.
        Path target = file.toAbsolutePath();
        try {
            if (Files.isDirectory(target)) {
                throw new InputRefusedException(
                        Message.of(MessageKey.RIG_SAVE_FAILED, Shown.printable(file.toString()), "it is a folder"));
            }
            if (Files.isSymbolicLink(target) && Files.exists(target)) {
                target = target.toRealPath();
            }
            replace(target, bytes);
        } catch (IOException fault) {
            throw new InputRefusedException(
                    Message.of(MessageKey.RIG_SAVE_FAILED, Shown.printable(file.toString()), FileText.reason(fault)));
        }
    }

    private static void replace(Path target, byte[] bytes) throws IOException {
        Path temporary = target.resolveSibling(target.getFileName() + ".saving-"
                + Long.toHexString(ProcessHandle.current().pid()) + "-"
                + Long.toHexString(Thread.currentThread().getId()));
        try {
            try (FileChannel channel =
                    FileChannel.open(temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    channel.write(buffer);
                }
                channel.force(true);
            }
            move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException fault) {
            // Some network folders cannot; the new file is whole on disk by then.
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
