package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Single quantities of a rig by the paths of their fields: what they are, and the same rig with one of them changed. */
public final class RigEdit {
    /** Whoever changes a field by program means the value: a slip of units cannot happen. */
    private static final Set<String> EVERY_FIELD =
            FieldCatalogue.fields().stream().map(Field::path).collect(Collectors.toUnmodifiableSet());

    private RigEdit() {}

    /**
     * What a quantity of the rig is, SI.
     *
     * @param path path of the field, with the numbers of list entries
     * @return empty when the rig does not have it, or when it is no quantity
     */
    public static OptionalDouble value(Rig rig, String path) {
        Field field = FieldCatalogue.find(path).orElse(null);
        if (field == null || field.kind() != Field.Kind.QUANTITY) {
            return OptionalDouble.empty();
        }
        JsonNode found = at(RigTree.of(rig), parent(path)).path(name(path));
        if (found.isMissingNode()) {
            return OptionalDouble.empty();
        }
        String text =
                found.isString() ? found.stringValue() : found.decimalValue().toPlainString();
        return QuantityReader.read(text, field.dimension().orElseThrow()) instanceof Reading.Read read
                ? OptionalDouble.of(read.si())
                : OptionalDouble.empty();
    }

    /**
     * What a field of the rig holds, as its file has it: words, a quantity with its unit, or a list of texts.
     *
     * @param path path of the field, with the numbers of list entries
     * @return empty when the rig does not have it, or when it has fields of its own
     */
    public static Optional<String> shown(Rig rig, String path) {
        JsonNode found = at(RigTree.of(rig), parent(path)).path(name(path));
        if (found.isMissingNode() || found.isObject()) {
            return Optional.empty();
        }
        if (found.isArray()) {
            List<String> texts = new ArrayList<>();
            found.forEach(entry -> texts.add(entry.asString()));
            return Optional.of(String.join(", ", texts));
        }
        return Optional.of(found.asString());
    }

    /**
     * The same rig with one quantity changed. The field is no guess any more.
     *
     * @param path path of the field, with the numbers of list entries
     * @param si the new value, SI
     * @throws InputRefusedException when the value is not accepted or does not fit the rest of the rig
     * @throws IllegalArgumentException when the rig has no such quantity
     */
    public static Rig with(Rig rig, String path, double si) {
        return with(rig, Map.of(path, si));
    }

    /** The same rig with several quantities changed at once, by path; otherwise as for a single one. */
    public static Rig with(Rig rig, Map<String, Double> values) {
        ObjectNode tree = RigTree.of(rig);
        values.forEach((path, si) -> set(tree, path, si));
        Rig changed = RigReader.parse(JsonLayout.text(tree), "the changed rig", rig.fluidId(), EVERY_FIELD);
        Set<String> left = new HashSet<>(changed.guesses());
        left.removeAll(values.keySet());
        return changed.withGuesses(left);
    }

    private static void set(ObjectNode tree, String path, double si) {
        Field field = FieldCatalogue.find(path).orElseThrow(() -> noSuch(path));
        if (field.kind() != Field.Kind.QUANTITY || !(at(tree, parent(path)) instanceof ObjectNode object)) {
            throw noSuch(path);
        }
        FieldWriter.at(object, FieldCatalogue.general(parent(path))).quantity(name(path), si);
    }

    private static JsonNode at(JsonNode tree, String path) {
        JsonNode node = tree;
        for (String step : path.isEmpty() ? new String[0] : path.split("\\.")) {
            int bracket = step.indexOf('[');
            node = node.path(bracket < 0 ? step : step.substring(0, bracket));
            if (bracket >= 0) {
                int index = Integer.parseInt(step.substring(bracket + 1, step.length() - 1));
                node = node instanceof ArrayNode list ? list.path(index) : node.path("");
            }
        }
        return node;
    }

    private static String parent(String path) {
        return path.substring(0, Math.max(0, path.lastIndexOf('.')));
    }

    private static String name(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static IllegalArgumentException noSuch(String path) {
        return new IllegalArgumentException("the rig has no quantity " + path);
    }
}
