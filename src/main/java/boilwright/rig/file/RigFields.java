package boilwright.rig.file;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import tools.jackson.core.JsonPointer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of a rig by their paths, as its file names them, to be read and changed one by one: every edit of a rig is applied here. A
 * changed rig passes the very checks that a file passes. Paths of list entries have their numbers: {@code stages[1].throatGap}.
 * Never changed: each edit gives new fields.
 */
public final class RigFields {
    private static final JsonMapper MAPPER = new JsonMapper();
    private static final String GUESSES = "guesses";
    private final ObjectNode tree;
    private final List<RigEdit> edits;

    private RigFields(ObjectNode tree, List<RigEdit> edits) {
        this.tree = tree;
        this.edits = edits;
    }

    /** The fields of a rig, every default written out. */
    public static RigFields of(Rig rig) {
        return new RigFields((ObjectNode) MAPPER.readTree(RigWriter.write(rig)), List.of());
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

    /** What stands at a path, as its file has it, a list of texts with commas; empty when nothing does or when it has fields of its own. */
    public Optional<String> shown(String path) {
        return at(path).isArray() ? Optional.of(String.join(", ", texts(path))) : text(path);
    }

    /** The quantity at a path, SI; empty when there is none. */
    public OptionalDouble quantity(String path) {
        Optional<Dimension> dimension = FieldCatalogue.find(path).flatMap(Field::dimension);
        Optional<String> text = text(path);
        return dimension.isPresent()
                        && text.isPresent()
                        && QuantityReader.read(text.get(), dimension.get()) instanceof Reading.Read read
                ? OptionalDouble.of(read.si())
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

    /** The same fields with an edit applied. */
    public RigFields with(RigEdit edit) {
        String path = edit.path();
        RigFields changed;
        if (edit.value() instanceof RigEdit.Quantity quantity) {
            changed = put(path, quantity.si());
        } else if (edit.value() instanceof RigEdit.Text text) {
            changed = put(path, MAPPER.getNodeFactory().stringNode(text.text()));
        } else if (edit.value() instanceof RigEdit.Texts texts) {
            ArrayNode list = MAPPER.createArrayNode();
            texts.texts().forEach(list::add);
            changed = put(path, list);
        } else {
            changed = switch ((RigEdit.Change) edit.value()) {
                case REMOVED -> removed(path);
                case APPENDED -> withEntry(path);
                case REPEATED -> withEntryTwice(path);
                case EARLIER -> withEntryBefore(path);
            };
        }
        List<RigEdit> all = new ArrayList<>(edits);
        all.add(edit);
        return new RigFields(changed.tree, List.copyOf(all));
    }

    /** The same fields with several edits applied, one after the other. */
    public RigFields with(List<RigEdit> list) {
        RigFields changed = this;
        for (RigEdit edit : list) {
            changed = changed.with(edit);
        }
        return changed;
    }

    /** The same fields with a quantity, SI, in place of what was there. */
    public RigFields with(String path, double si) {
        return with(RigEdit.of(path, si));
    }

    /** The same fields with a text in place of what was there. */
    public RigFields with(String path, String text) {
        return with(RigEdit.of(path, text));
    }

    /** The same fields with a list of texts in place of what was there. */
    public RigFields with(String path, List<String> texts) {
        return with(new RigEdit(path, new RigEdit.Texts(texts)));
    }

    /** The same fields without what was at this path, an entry of a list included. */
    public RigFields without(String path) {
        return with(new RigEdit(path, RigEdit.Change.REMOVED));
    }

    /** The same fields with one entry of a list repeated after itself, in full. */
    public RigFields repeated(String path) {
        return with(new RigEdit(path, RigEdit.Change.REPEATED));
    }

    /** The same fields with one more entry, empty, at the end of a list, which is made when it is not there. */
    public RigFields appended(String list) {
        return with(new RigEdit(list, RigEdit.Change.APPENDED));
    }

    /** The same fields with an entry of a list before the one that it followed; the first one stays where it is. */
    public RigFields earlier(String entry) {
        return with(new RigEdit(entry, RigEdit.Change.EARLIER));
    }

    private RigFields removed(String path) {
        ObjectNode copy = tree.deepCopy();
        JsonNode parent = copy.at(pointer(path).head());
        OptionalInt index = index(path);
        if (parent instanceof ArrayNode list && index.isPresent()) {
            list.remove(index.getAsInt());
        } else if (parent instanceof ObjectNode object) {
            object.remove(name(path));
        }
        return new RigFields(copy, edits)
                .marking(guess -> isWithin(guess, path) ? List.of() : List.of(moved(guess, path, -1)));
    }

    private RigFields withEntryTwice(String path) {
        ObjectNode copy = tree.deepCopy();
        int index = index(path).orElseThrow();
        ArrayNode list = (ArrayNode) copy.at(pointer(path).head());
        list.insert(index + 1, list.get(index).deepCopy());
        String copied = path.substring(0, path.lastIndexOf('[')) + "[" + (index + 1) + "]";
        return new RigFields(copy, edits)
                .marking(guess -> isWithin(guess, path)
                        ? List.of(guess, copied + guess.substring(path.length()))
                        : List.of(moved(guess, path, 1)));
    }

    private RigFields withEntry(String list) {
        ObjectNode copy = tree.deepCopy();
        JsonNode found = copy.at(pointer(list));
        ArrayNode entries =
                found instanceof ArrayNode there ? there : ((ObjectNode) holder(copy, list)).putArray(name(list));
        entries.addObject();
        return new RigFields(copy, edits);
    }

    /** The same fields with quantities, SI, in place of all that a list had: one row an entry, in the catalogue's order. */
    public RigFields withRows(String list, List<List<Double>> rows) {
        List<Field> columns = FieldCatalogue.children(list + "[]");
        RigFields filled = with(list, List.of());
        for (int i = 0; i < rows.size(); i++) {
            filled = filled.appended(list);
            for (int k = 0; k < columns.size(); k++) {
                String path = list + "[" + i + "]." + columns.get(k).name();
                filled = filled.with(path, rows.get(i).get(k));
            }
        }
        return filled;
    }

    private RigFields withEntryBefore(String entry) {
        int index = index(entry).orElseThrow();
        if (index == 0) {
            return this;
        }
        ObjectNode copy = tree.deepCopy();
        ArrayNode list = (ArrayNode) copy.at(pointer(entry).head());
        list.insert(index - 1, list.remove(index));
        String before = entry.substring(0, entry.lastIndexOf('[')) + "[" + (index - 1) + "]";
        return new RigFields(copy, edits).marking(guess -> {
            if (isWithin(guess, entry)) {
                return List.of(before + guess.substring(entry.length()));
            }
            return List.of(isWithin(guess, before) ? entry + guess.substring(before.length()) : guess);
        });
    }

    /**
     * The rig that these fields describe. Likely slips are not asked about again: whoever edits by program means them.
     *
     * @param fluidIds ids of the fluids that are known
     * @throws boilwright.errors.InputRefusedException when the fields do not go together
     */
    public Rig rig(Collection<String> fluidIds) {
        return read(fluidIds, Findings.ofEdits("the changed rig", List.of(), Set.of()));
    }

    /**
     * The rig that these fields describe, as a person edited it: an edited field whose value looks like a slip is refused.
     *
     * @param fluidIds ids of the fluids that are known
     * @param option what stands before the path of an edited field in messages, such as {@code --set}; empty for nothing
     * @param acceptedFields paths of edited fields whose unusual values are meant as they are written
     * @throws boilwright.errors.InputRefusedException when an edit is not accepted or the fields do not go together
     */
    public Rig rig(Collection<String> fluidIds, String option, Set<String> acceptedFields) {
        List<String> paths = edits.stream().map(RigEdit::path).distinct().toList();
        return read(fluidIds, Findings.ofEdits(option, paths, acceptedFields));
    }

    private Rig read(Collection<String> fluidIds, Findings findings) {
        return RigReader.parse(MAPPER.writeValueAsString(tree), fluidIds, Migrations.CURRENT, findings);
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
        return new RigFields(copy, edits);
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

    private RigFields put(String path, double si) {
        field(path);
        ObjectNode holder = JsonNodeFactory.instance.objectNode();
        FieldWriter.at(holder, FieldCatalogue.general(path.substring(0, Math.max(0, path.lastIndexOf('.')))))
                .quantity(name(path), si);
        return put(path, holder.get(name(path)));
    }

    /** What was put by hand is no guess any more. */
    private RigFields put(String path, JsonNode value) {
        field(path);
        ObjectNode copy = tree.deepCopy();
        JsonNode parent = holder(copy, path);
        OptionalInt index = index(path);
        if (parent instanceof ArrayNode list && index.isPresent()) {
            list.set(index.getAsInt(), value);
        } else {
            ((ObjectNode) parent).set(name(path), value);
        }
        return new RigFields(copy, edits).marking(guess -> isWithin(guess, path) ? List.of() : List.of(guess));
    }

    /** What holds the field, made when the rig has no such part yet. */
    private static JsonNode holder(ObjectNode root, String path) {
        JsonPointer head = pointer(path).head();
        JsonNode found = root.at(head);
        if (!found.isMissingNode()) {
            return found;
        }
        String parent = path.substring(0, path.lastIndexOf('.'));
        if (!(holder(root, parent) instanceof ObjectNode object)) {
            throw new IllegalArgumentException("the rig has no entry " + parent);
        }
        return object.putObject(name(parent));
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
