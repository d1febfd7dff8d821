package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import boilwright.files.AtomicFile;
import boilwright.rig.Rig;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** Writes rig files. What was written reads back as an equal rig. */
public final class RigWriter {
    private static final ObjectWriter WRITER =
            JsonMapper.builder().build().writer().with(layout());

    private RigWriter() {}

    /** The text of a rig's file: canonical order, quantities with units, every default written out. */
    public static String write(Rig rig) {
        return text(RigTree.of(rig));
    }

    /** The text of a value, the same on every machine: two blanks a level, one entry a line, a line feed at its end. */
    static String text(JsonNode value) {
        return WRITER.writeValueAsString(value) + "\n";
    }

    /**
     * Saves a rig. The file is either the old one or the whole new one, even when power fails meanwhile; a link stays a link,
     * what it points to is replaced.
     *
     * @param rig the rig
     * @param file where to; replaced when it exists
     * @throws InputRefusedException when it cannot be written; the old file is left as it was
     */
    public static void save(Rig rig, Path file) {
        try {
            AtomicFile.write(file, write(rig).getBytes(StandardCharsets.UTF_8));
        } catch (OutputNotWrittenException fault) {
            throw new InputRefusedException(Message.of(
                    MessageKey.RIG_SAVE_FAILED,
                    Shown.printable(file.toString()),
                    fault.reason().arguments().get(1)));
        }
    }

    private static DefaultPrettyPrinter layout() {
        Separators separators = Separators.createDefaultInstance()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(separators).withObjectIndenter(indenter).withArrayIndenter(indenter);
    }
}
