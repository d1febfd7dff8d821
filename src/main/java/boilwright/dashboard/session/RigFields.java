package boilwright.dashboard.session;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of a rig by their paths, as its file names them, to be read and changed one by one. A changed rig passes the
 * very checks that a file passes. Paths of list entries have their numbers: {@code stages[1].throatGap}. Never changed: each
 * change gives new fields.
 */
public final class RigFields {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final String GUESSES = "guesses";
    private static final Set<String> EVERY_FIELD =
            FieldCatalogue.fields().stream().map(Field::path).collect(Collectors.toUnmodifiableSet());

    private final ObjectNode tree;

    private RigFields(ObjectNode tree) {
        this.tree = tree;
    }

    /** The fields of a rig, every default written out. */
    public static RigFields of(Rig rig) {
        return new RigFields((ObjectNode) MAPPER.readTree(RigWriter.write(rig)));
    }

    /** Whether the rig has something at this path. */
    public boolean has(String path) {
        return !at(path).isMissingNode();
    }

    /** What stands at a path, as the file has it; empty when nothing does or when it is no single value. */
    public Optional<String> text(String path) {
        JsonNode node = at(path);
        return node.isValueNode() ? Optional.of(node.asString()) : Optional.empty();
    }

    /** The texts of a list of texts. */
    public List<String> texts(String path) {
        JsonNode node = at(path);
        return node.isArray() ? node.valueStream().map(JsonNode::asString).toList() : List.of();
    }

    /** The quantity at a path, SI; empty when there is none. */
    public OptionalDouble quantity(String path) {
        Field field = field(path);
        Optional<String> text = text(path);
        boolean readable = text.isPresent()
                && QuantityReader.read(text.get(), field.dimension().orElseThrow()) instanceof Reading.Read;
        return readable
                ? OptionalDouble.of(((Reading.Read) QuantityReader.read(
                                text.get(), field.dimension().get()))
                        .si())
                : OptionalDouble.empty();
    }

    /** Whether the quantity, choice or text at a path was guessed, not measured. */
    public boolean isGuess(String path) {
        return texts(GUESSES).contains(path);
    }

    /** How many entries the list at a path has. */
    public int count(String path) {
        return at(path).size();
    }

    /** The same fields with a quantity, SI, in place of what was there. */
    public RigFields with(String path, double si) {
        Field field = field(path);
        UnitSpelling unit =
                UnitTable.find(field.unit(), field.dimension().orElseThrow()).orElseThrow();
        String exact = QuantityWriter.exact(si, unit);
        if (unit.isPlain()) {
            return put(path, MAPPER.getNodeFactory().numberNode(new BigDecimal(exact)));
        }
        boolean same = QuantityReader.read(exact, unit.dimension()) instanceof Reading.Read read && read.si() == si;
        UnitSpelling written = same
                ? unit
                : UnitTable.find(unit.dimension().siUnit(), unit.dimension()).orElseThrow();
        return put(path, MAPPER.getNodeFactory().stringNode(QuantityWriter.exact(si, written)));
    }

    /** The same fields with a text in place of what was there. */
    public RigFields with(String path, String text) {
        return put(path, MAPPER.getNodeFactory().stringNode(text));
    }

    /** The same fields with a list of texts in place of what was there. */
    public RigFields with(String path, List<String> texts) {
        ArrayNode list = MAPPER.createArrayNode();
        texts.forEach(list::add);
        return put(path, list);
    }

    /** The same fields without what was at this path, an entry of a list included. */
    public RigFields without(String path) {
        ObjectNode copy = tree.deepCopy();
        JsonNode parent = copy.at(pointer(path).head());
        OptionalInt index = index(path);
        if (parent instanceof ArrayNode list && index.isPresent()) {
            list.remove(index.getAsInt());
        } else if (parent instanceof ObjectNode object) {
            object.remove(name(path));
        }
        return new RigFields(copy)
                .marking(guess -> isWithin(guess, path) ? List.of() : List.of(moved(guess, path, -1)));
    }

    /** The same fields with one entry of a list repeated after itself, in full. */
    public RigFields repeated(String path) {
        ObjectNode copy = tree.deepCopy();
        int index = index(path).orElseThrow();
        ArrayNode list = (ArrayNode) copy.at(pointer(path).head());
        list.insert(index + 1, list.get(index).deepCopy());
        String copied = path.substring(0, path.lastIndexOf('[')) + "[" + (index + 1) + "]";
        return new RigFields(copy)
                .marking(guess -> isWithin(guess, path)
                        ? List.of(guess, copied + guess.substring(path.length()))
                        : List.of(moved(guess, path, 1)));
    }

    /** The same fields with one more entry, empty, at the end of a list, which is made when it is not there. */
    public RigFields appended(String list) {
        ObjectNode copy = tree.deepCopy();
        JsonNode found = copy.at(pointer(list));
        ArrayNode entries =
                found instanceof ArrayNode there ? there : ((ObjectNode) holder(copy, list)).putArray(name(list));
        entries.addObject();
        return new RigFields(copy);
    }

    /** The same fields with quantities, SI, in place of all that a list had: one row an entry, in the catalogue's order. */
    public RigFields withRows(String list, List<List<Double>> rows) {
        List<Field> columns = FieldCatalogue.children(list + "[]");
        RigFields filled = put(list, MAPPER.createArrayNode());
        for (int i = 0; i < rows.size(); i++) {
            filled = filled.appended(list);
            for (int k = 0; k < columns.size(); k++) {
                String path = list + "[" + i + "]." + columns.get(k).name();
                filled = filled.with(path, rows.get(i).get(k));
            }
        }
        return filled;
    }

    /** The same fields with an entry of a list before the one that it followed; the first one stays where it is. */
    public RigFields earlier(String entry) {
        int index = index(entry).orElseThrow();
        if (index == 0) {
            return this;
        }
        ObjectNode copy = tree.deepCopy();
        ArrayNode list = (ArrayNode) copy.at(pointer(entry).head());
        list.insert(index - 1, list.remove(index));
        String before = entry.substring(0, entry.lastIndexOf('[')) + "[" + (index - 1) + "]";
        return new RigFields(copy).marking(guess -> {
            if (isWithin(guess, entry)) {
                return List.of(before + guess.substring(entry.length()));
            }
            return List.of(isWithin(guess, before) ? entry + guess.substring(before.length()) : guess);
        });
    }

    /**
     * The rig that these fields describe. Likely slips are not asked about again: whoever typed them was asked.
     *
     * @param fluidIds ids of the fluids that are known
     * @throws boilwright.errors.InputRefusedException when the fields do not go together
     */
    public Rig rig(Collection<String> fluidIds) {
        return RigReader.readText("rig", MAPPER.writeValueAsString(tree), fluidIds, EVERY_FIELD);
    }

    /** The paths of the fields in which two rigs differ, sorted. */
    public static List<String> differences(Rig one, Rig other) {
        Set<String> paths = new TreeSet<>();
        differences("", of(one).tree, of(other).tree, paths);
        return new ArrayList<>(paths);
    }

    private static void differences(String path, JsonNode one, JsonNode other, Set<String> paths) {
        if (one.isObject() && other.isObject()) {
            Set<String> names = new TreeSet<>(one.propertyNames());
            names.addAll(other.propertyNames());
            String before = path.isEmpty() ? "" : path + ".";
            names.forEach(name -> differences(before + name, one.path(name), other.path(name), paths));
        } else if (one.isArray() && other.isArray() && one.size() == other.size()) {
            for (int i = 0; i < one.size(); i++) {
                differences(path + "[" + i + "]", one.get(i), other.get(i), paths);
            }
        } else if (!one.equals(other)) {
            paths.add(path);
        }
    }

    /** The same fields with each mark of a guess put where it belongs after a change. */
    private RigFields marking(Function<String, List<String>> where) {
        if (!tree.has(GUESSES)) {
            return this;
        }
        ObjectNode copy = tree.deepCopy();
        ArrayNode marks = MAPPER.createArrayNode();
        texts(GUESSES).stream().flatMap(guess -> where.apply(guess).stream()).forEach(marks::add);
        copy.set(GUESSES, marks);
        return new RigFields(copy);
    }

    private static boolean isWithin(String guess, String path) {
        return guess.equals(path) || guess.startsWith(path + ".") || guess.startsWith(path + "[");
    }

    /** Where a guess stands after an entry of its list came in or went out before it. */
    private static String moved(String guess, String entry, int by) {
        OptionalInt changed = index(entry);
        String list = changed.isEmpty() ? "" : entry.substring(0, entry.lastIndexOf('[') + 1);
        if (changed.isEmpty() || !guess.startsWith(list)) {
            return guess;
        }
        int end = guess.indexOf(']', list.length());
        int at = Integer.parseInt(guess.substring(list.length(), end));
        return at > changed.getAsInt() ? list + (at + by) + guess.substring(end) : guess;
    }

    /** What was put by hand is no guess any more. */
    private RigFields put(String path, JsonNode value) {
        ObjectNode copy = tree.deepCopy();
        JsonNode parent = holder(copy, path);
        OptionalInt index = index(path);
        if (parent instanceof ArrayNode list && index.isPresent()) {
            list.set(index.getAsInt(), value);
        } else {
            ((ObjectNode) parent).set(name(path), value);
        }
        return new RigFields(copy).marking(guess -> isWithin(guess, path) ? List.of() : List.of(guess));
    }

    /** What holds the field, made when the rig has no such part yet. */
    private static JsonNode holder(ObjectNode root, String path) {
        JsonPointer head = pointer(path).head();
        JsonNode found = root.at(head);
        if (!found.isMissingNode()) {
            return found;
        }
        String parent = path.substring(0, path.lastIndexOf('.'));
        return ((ObjectNode) holder(root, parent)).putObject(name(parent));
    }

    private JsonNode at(String path) {
        return path.isEmpty() ? tree : tree.at(pointer(path));
    }

    private static JsonPointer pointer(String path) {
        return JsonPointer.compile(
                "/" + path.replace("[]", "").replace("]", "").replace('[', '/').replace('.', '/'));
    }

    private static Field field(String path) {
        return FieldCatalogue.find(path)
                .orElseThrow(() -> new IllegalArgumentException("the catalogue has no field " + path));
    }

    private static String name(String path) {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    private static OptionalInt index(String path) {
        return path.endsWith("]")
                ? OptionalInt.of(Integer.parseInt(path.substring(path.lastIndexOf('[') + 1, path.length() - 1)))
                : OptionalInt.empty();
    }
}
