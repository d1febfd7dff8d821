package boilwright.fluid;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;

/** One fluid file of the user's own, read and checked; {@link FluidLibrary#with} makes its fluid known. */
public final class FluidFile {
    private final String name;
    private final FluidRecord fluid;
    private final byte[] content;

    private FluidFile(String name, FluidRecord fluid, byte[] content) {
        this.name = name;
        this.fluid = fluid;
        this.content = content;
    }

    /**
     * Reads a file and checks it as the program's own files are checked.
     *
     * @param file the file; its name may end in anything
     * @throws InputRefusedException naming every fault of the file, or that it cannot be read
     */
    public static FluidFile read(Path file) {
        String name = file.toString();
        byte[] content = content(file);
        return new FluidFile(name, FluidFileReader.read(name, content), content);
    }

    /** The file's name as it was given. */
    public String name() {
        return name;
    }

    /** The fluid that it describes. */
    public FluidRecord fluid() {
        return fluid;
    }

    /** Adds what the file held to a hash. */
    void addTo(CRC32 hash) {
        hash.update(content);
    }

    private static byte[] content(Path file) {
        try (InputStream stream = Files.newInputStream(file)) {
            byte[] content = stream.readNBytes(FluidFileReader.LONGEST_FILE + 1);
            if (content.length > FluidFileReader.LONGEST_FILE) {
                throw new InputRefusedException(Message.of(
                        MessageKey.FLUID_FILE_TOO_LONG,
                        file.toString(),
                        Integer.toString(FluidFileReader.LONGEST_FILE)));
            }
            return content;
        } catch (IOException e) {
            throw unreadable(file, e);
        }
    }

    static InputRefusedException unreadable(Path path, IOException e) {
        return new InputRefusedException(Message.of(MessageKey.FLUID_FILE_UNREADABLE, path.toString(), IoReason.of(e)));
    }
}
