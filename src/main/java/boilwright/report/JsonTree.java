package boilwright.report;

import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * One JSON object of a report, filled in the order in which its keys are written. Numbers are finite: what is absent is
 * null, and a value that is not a number is a fault of the program and is refused as such.
 */
final class JsonTree {
    private static final ObjectWriter WRITER = JsonMapper.builder()
            .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER) // the same digits on every Java
            .build()
            .writer()
            .with(new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultIndenter("  ", "\n")));

    private final ObjectNode node;

    JsonTree() {
        this(JsonNodeFactory.instance.objectNode());
    }

    private JsonTree(ObjectNode node) {
        this.node = node;
    }

    JsonTree put(String key, String value) {
        node.put(key, value);
        return this;
    }

    JsonTree put(String key, int value) {
        node.put(key, value);
        return this;
    }

    JsonTree put(String key, long value) {
        node.put(key, value);
        return this;
    }

    JsonTree put(String key, boolean value) {
        node.put(key, value);
        return this;
    }

    JsonTree put(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("the result " + key + " is not a number: " + value);
        }
        node.put(key, value);
        return this;
    }

    JsonTree put(String key, OptionalDouble value) {
        if (value.isPresent()) {
            return put(key, value.getAsDouble());
        }
        node.putNull(key);
        return this;
    }

    JsonTree put(String key, List<String> values) {
        ArrayNode array = node.putArray(key);
        values.forEach(array::add);
        return this;
    }

    /** Text, or null when there is none. */
    JsonTree putTextOrNull(String key, String value) {
        return value.isEmpty() ? putNull(key) : put(key, value);
    }

    /** No object under this key. */
    JsonTree nothing(String key) {
        return putNull(key);
    }

    /** A new object under this key. */
    JsonTree object(String key) {
        return new JsonTree(node.putObject(key));
    }

    /** A list of objects under this key. */
    JsonTree.Rows rows(String key) {
        return new Rows(node.putArray(key));
    }

    private JsonTree putNull(String key) {
        node.putNull(key);
        return this;
    }

    /** The whole object as text, ended by a line feed. */
    String text() {
        return WRITER.writeValueAsString(node) + "\n";
    }

    /** A list of objects. */
    static final class Rows {
        private final ArrayNode array;

        private Rows(ArrayNode array) {
            this.array = array;
        }

        JsonTree add() {
            return new JsonTree(array.addObject());
        }
    }
}
