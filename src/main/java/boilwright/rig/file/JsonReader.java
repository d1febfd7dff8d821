package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonNumber;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import boilwright.rig.file.Json.JsonWord;
import boilwright.rig.file.Json.Position;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON text strictly into values that know their place. Doubled keys are reported, all of them, with their path. */
final class JsonReader {
    /** Deepest nesting read. */
    static final int DEEPEST = 50;

    private static final int LONGEST_NUMBER = 100;
    private static final int LONGEST_NAME = 500;
    private static final int NEAR = 20;
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .streamReadConstraints(StreamReadConstraints.builder()
                    .maxNestingDepth(DEEPEST)
                    .maxNumberLength(LONGEST_NUMBER)
                    .maxNameLength(LONGEST_NAME)
                    .maxStringLength(FileText.LARGEST)
                    .maxDocumentLength(FileText.LARGEST)
                    .build())
            .build();

    private final Findings findings;
    private final String text;
    private String open = "the rig";

    private JsonReader(String text, Findings findings) {
        this.text = text;
        this.findings = findings;
    }

    /**
     * The one value that a text holds.
     *
     * @param text the text, not blank
     * @param findings where doubled keys are reported
     * @throws InputRefusedException when the text is not JSON, is cut off, too deep, or more follows
     */
    static Json read(String text, Findings findings) {
        return new JsonReader(text, findings).read();
    }

    private Json read() {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), text)) {
            return read(parser);
        }
    }

    private Json read(JsonParser parser) {
        try {
            parser.nextToken();
            Json root = value(parser, "");
            if (parser.nextToken() != null) {
                Position at = position(parser.currentTokenLocation());
                throw refusal(MessageKey.RIG_JSON_TRAILING, line(at), column(at));
            }
            return root;
        } catch (StreamConstraintsException fault) {
            // The fault itself does not say where; the parser stands there still.
            Position at = position(parser.currentLocation());
            boolean deep = parser.streamReadContext().getNestingDepth() >= DEEPEST;
            throw deep
                    ? refusal(MessageKey.RIG_JSON_DEEP, Integer.toString(DEEPEST), line(at))
                    : refusal(MessageKey.RIG_JSON_OVERLONG, line(at), column(at));
        } catch (UnexpectedEndOfInputException fault) {
            Position at = endOfText();
            throw refusal(MessageKey.RIG_JSON_TRUNCATED, line(at), column(at), open);
        } catch (JacksonException fault) {
            Position at = position(fault.getLocation());
            throw refusal(MessageKey.RIG_JSON_BROKEN, line(at), column(at), near(at));
        }
    }

    private Json value(JsonParser parser, String path) {
        Position at = position(parser.currentTokenLocation());
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser, path, at);
            case START_ARRAY -> array(parser, path, at);
            case VALUE_STRING -> new JsonText(parser.getString(), at);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new JsonNumber(parser.getString(), at);
            default -> new JsonWord(parser.getString(), at);
        };
    }

    private JsonObject object(JsonParser parser, String path, Position at) {
        Map<String, Json> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            String memberPath = (path.isEmpty() ? "" : path + ".") + Shown.plain(name);
            open = memberPath;
            parser.nextToken();
            Json value = value(parser, memberPath);
            Json first = members.putIfAbsent(name, value);
            if (first != null) {
                findings.reportAt(value.at(), MessageKey.RIG_FIELD_DOUBLED, memberPath, line(first.at()));
            }
        }
        return new JsonObject(members, at);
    }

    private JsonArray array(JsonParser parser, String path, Position at) {
        List<Json> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            open = path + "[" + items.size() + "]";
            items.add(value(parser, open));
        }
        return new JsonArray(items, at);
    }

    private InputRefusedException refusal(MessageKey key, String... values) {
        List<String> all = new ArrayList<>(List.of(findings.file()));
        all.addAll(List.of(values));
        return new InputRefusedException(new Message(key, all));
    }

    private static Position position(TokenStreamLocation location) {
        return new Position(Math.max(location.getLineNr(), 1), Math.max(location.getColumnNr(), 1));
    }

    private Position endOfText() {
        String[] lines = text.stripTrailing().split("\r\n|\r|\n", -1);
        return new Position(lines.length, lines[lines.length - 1].length() + 1);
    }

    private String near(Position at) {
        String[] lines = text.split("\r\n|\r|\n", -1);
        String lineText = lines[Math.min(at.line(), lines.length) - 1];
        int middle = Math.min(at.column() - 1, lineText.length());
        String around = lineText.substring(Math.max(0, middle - NEAR), Math.min(lineText.length(), middle + NEAR));
        return Shown.quoted(around.strip());
    }

    private static String line(Position at) {
        return Integer.toString(at.line());
    }

    private static String column(Position at) {
        return Integer.toString(at.column());
    }
}
