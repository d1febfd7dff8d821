package boilwright.rig.file;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The parts of one schema that stand in several places: named while the schema is built, then moved into its {@code $defs} and
 * referred to. What stands in one place stays there.
 */
final class SharedSchemas {
    private static final String DEFINITIONS = "$defs";
    private static final String REFERENCE = "$ref";

    private final Map<ObjectNode, String> names = new LinkedHashMap<>();
    private final Map<ObjectNode, Integer> places = new HashMap<>();
    private final Map<String, ObjectNode> definitions = new TreeMap<>();

    /** Has a schema refer to a definition that is there for this purpose, such as the pattern of a quantity. */
    void refer(ObjectNode schema, String name, ObjectNode definition) {
        definitions.put(name, definition);
        schema.put(REFERENCE, "#/" + DEFINITIONS + "/" + name);
    }

    /** Names a part that is finished, in case it stands in several places. Equal parts keep the first name. */
    void name(ObjectNode part, String name) {
        names.putIfAbsent(part.deepCopy(), name);
    }

    /** Moves what stands in several places into the definitions of a finished schema. */
    void close(ObjectNode schema) {
        schema.forEach(this::count);
        schema.propertyStream().toList().forEach(member -> schema.set(member.getKey(), replaced(member.getValue())));
        ObjectNode target = schema.putObject(DEFINITIONS);
        definitions.forEach(target::set);
    }

    /** Counts places; what stands inside a part that was met before is not counted again, as it will stand there once. */
    private void count(JsonNode node) {
        boolean again =
                node instanceof ObjectNode part && names.containsKey(part) && places.merge(part, 1, Integer::sum) > 1;
        if (!again) {
            node.forEach(this::count);
        }
    }

    private JsonNode replaced(JsonNode node) {
        if (node instanceof ArrayNode list) {
            ArrayNode changed = list.arrayNode();
            list.forEach(entry -> changed.add(replaced(entry)));
            return changed;
        }
        if (!(node instanceof ObjectNode part)) {
            return node;
        }
        if (places.getOrDefault(part, 0) < 2) {
            return members(part);
        }
        String name = names.get(part);
        if (!definitions.containsKey(name)) {
            // Held open while its own parts are looked at.
            definitions.put(name, part);
            definitions.put(name, members(part));
        }
        return part.objectNode().put(REFERENCE, "#/" + DEFINITIONS + "/" + name);
    }

    private ObjectNode members(ObjectNode part) {
        ObjectNode changed = part.objectNode();
        part.propertyStream().forEach(member -> changed.set(member.getKey(), replaced(member.getValue())));
        return changed;
    }
}
