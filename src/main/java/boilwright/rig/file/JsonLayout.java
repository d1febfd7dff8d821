package boilwright.rig.file;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;

/** Writes JSON the same on every machine: two blanks a level, line feeds, one entry a line. */
final class JsonLayout {
    private static final ObjectWriter WRITER =
            JsonMapper.builder().build().writer().with(printer());

    private JsonLayout() {}

    /** The text of a value, with a line feed at its end. */
    static String text(JsonNode value) {
        return WRITER.writeValueAsString(value) + "\n";
    }

    private static DefaultPrettyPrinter printer() {
        Separators separators = Separators.createDefaultInstance()
                .withObjectNameValueSpacing(Separators.Spacing.AFTER)
                .withObjectEmptySeparator("")
                .withArrayEmptySeparator("");
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter(separators).withObjectIndenter(indenter).withArrayIndenter(indenter);
    }
}
