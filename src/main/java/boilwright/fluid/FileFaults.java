package boilwright.fluid;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** The faults of one data file, collected while its tree is walked, and the checks of single fields that find them. */
final class FileFaults {
    private static final int LONGEST_SHOWN = 60;

    private final String file;
    private final List<Message> found = new ArrayList<>();

    FileFaults(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }

    List<Message> found() {
        return List.copyOf(found);
    }

    boolean none() {
        return found.isEmpty();
    }

    void add(Message fault) {
        found.add(fault);
    }

    /** Notes that a field has a value that is not accepted. */
    void refuse(String path, JsonNode node, String accepted) {
        found.add(Message.of(MessageKey.FLUID_FIELD_REFUSED, file, path, shown(node), accepted));
    }

    /** Checks that a node is an object with no other fields than these; false when it is no object. */
    boolean object(String path, JsonNode node, Collection<String> required, Collection<String> optional) {
        if (!node.isObject()) {
            refuse(path.isEmpty() ? "at its top" : path, node, "an object in braces");
            return false;
        }
        List<String> accepted = new ArrayList<>(required);
        accepted.addAll(optional);
        for (String name : node.propertyNames()) {
            if (!accepted.contains(name)) {
                found.add(unknown(join(path, name), name, accepted));
            }
        }
        for (String name : required) {
            if (node.get(name) == null) {
                found.add(Message.of(MessageKey.FLUID_FIELD_MISSING, file, join(path, name)));
            }
        }
        return true;
    }

    /** A text that is not blank; a missing field has been noted by {@link #object}. */
    Optional<String> text(String path, JsonNode parent, String name) {
        JsonNode node = parent.get(name);
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isString() || node.stringValue().isBlank()) {
            refuse(join(path, name), node, "a text");
            return Optional.empty();
        }
        return Optional.of(node.stringValue());
    }

    /** A text out of a closed list. */
    Optional<String> choice(String path, JsonNode parent, String name, List<String> accepted) {
        Optional<String> text = text(path, parent, name);
        if (text.isPresent() && !accepted.contains(text.get())) {
            String own = join(path, name);
            String list = String.join(", ", accepted);
            String shown = shown(parent.get(name));
            found.add(NearestSpelling.of(text.get(), accepted)
                    .map(nearest -> Message.of(MessageKey.FLUID_FIELD_REFUSED_NEAREST, file, own, shown, nearest, list))
                    .orElseGet(() -> Message.of(MessageKey.FLUID_FIELD_REFUSED, file, own, shown, "one of: " + list)));
            return Optional.empty();
        }
        return text;
    }

    private Message unknown(String path, String name, List<String> accepted) {
        String list = String.join(", ", accepted);
        return NearestSpelling.of(name, accepted)
                .map(nearest -> Message.of(MessageKey.FLUID_FIELD_UNKNOWN_NEAREST, file, path, nearest, list))
                .orElseGet(() -> Message.of(MessageKey.FLUID_FIELD_UNKNOWN, file, path, list));
    }

    /** True or false; empty when missing or something else. */
    Optional<Boolean> flag(String path, JsonNode parent, String name) {
        JsonNode node = parent.get(name);
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isBoolean()) {
            refuse(join(path, name), node, "true or false");
            return Optional.empty();
        }
        return Optional.of(node.booleanValue());
    }

    /** A finite number; empty when missing or something else. */
    Optional<Double> number(String path, JsonNode parent, String name) {
        JsonNode node = parent.get(name);
        if (node == null) {
            return Optional.empty();
        }
        if (!isFinite(node)) {
            refuse(join(path, name), node, "a number without a unit");
            return Optional.empty();
        }
        return Optional.of(node.doubleValue());
    }

    /** Finite numbers in square brackets; empty when missing or something else. */
    Optional<double[]> numbers(String path, JsonNode parent, String name) {
        JsonNode node = parent.get(name);
        if (node == null) {
            return Optional.empty();
        }
        if (!node.isArray() || node.isEmpty() || node.valueStream().anyMatch(n -> !isFinite(n))) {
            refuse(join(path, name), node, "numbers in square brackets");
            return Optional.empty();
        }
        return Optional.of(node.valueStream().mapToDouble(JsonNode::doubleValue).toArray());
    }

    /** Two numbers, the lower first, both inside the given limits. */
    Optional<PropertyValue.Span> span(String path, JsonNode parent, String name, double lowest, double highest) {
        Optional<double[]> ends = numbers(path, parent, name);
        if (ends.isEmpty()) {
            return Optional.empty();
        }
        double[] pair = ends.get();
        if (pair.length != 2 || !(pair[0] < pair[1]) || pair[0] < lowest || pair[1] > highest) {
            refuse(
                    join(path, name),
                    parent.get(name),
                    "two numbers, the lower first, between " + Numbers.text(lowest) + " and " + Numbers.text(highest));
            return Optional.empty();
        }
        return Optional.of(new PropertyValue.Span(pair[0], pair[1]));
    }

    static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private static boolean isFinite(JsonNode node) {
        return node.isNumber() && Double.isFinite(node.doubleValue());
    }

    private static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }
}
