package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * One object of a rig file, read against the catalogue. Reading never stops: a fault is reported, and the value becomes NaN,
 * null or empty, of which later checks say nothing.
 */
final class Section {
    private final Optional<JsonObject> object;
    private final String path;
    private final String inCatalogue;
    private final Findings findings;
    private final Set<String> misspelt = new HashSet<>();

    private Section(Optional<JsonObject> object, String path, String inCatalogue, Findings findings) {
        this.object = object;
        this.path = path;
        this.inCatalogue = inCatalogue;
        this.findings = findings;
        object.ifPresent(present -> findings.saw(path, present));
    }

    /** The rig itself, with its unknown fields reported. */
    static Section root(JsonObject file, Findings findings) {
        Section root = new Section(Optional.of(file), "", "", findings);
        root.reportUnknown(null);
        return root;
    }

    /**
     * An object of another file that holds what an object of a rig holds; the caller reads its kind and reports unknown fields.
     *
     * @param path where it stands in that file
     * @param inCatalogue path of the rig's object, by which its fields are known
     */
    static Section ofKinds(JsonObject object, String path, String inCatalogue, Findings findings) {
        return new Section(Optional.of(object), path, inCatalogue, findings);
    }

    /** Path of this object; empty for the rig itself. */
    String path() {
        return path;
    }

    /** Path of a field of this object. */
    String path(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    private String catalogued(String name) {
        return inCatalogue.isEmpty() ? name : inCatalogue + "." + name;
    }

    /** Whether the file has the field. */
    boolean has(String name) {
        return object.isPresent() && object.get().members().containsKey(name);
    }

    /** The names that the object has, in the order of the file. */
    Set<String> names() {
        return object.map(present -> present.members().keySet()).orElse(Set.of());
    }

    /** A quantity in SI; NaN when it is missing or refused. */
    double quantity(String name) {
        return quantityAs(name, field(name));
    }

    /** A quantity that may be left out. */
    OptionalDouble optionalQuantity(String name) {
        return has(name) ? OptionalDouble.of(quantity(name)) : OptionalDouble.empty();
    }

    /** A quantity that has a default, SI. */
    double quantityOr(String name, double usual) {
        return has(name) ? quantity(name) : usual;
    }

    /** A quantity read as another field describes it. */
    double quantityAs(String name, Field field) {
        Optional<Json> json = find(name);
        return json.isEmpty() ? Double.NaN : QuantityField.read(field, path(name), json.get(), findings);
    }

    /** The text that stands at a field, when it is one, as it was written. */
    Optional<String> textOf(String name) {
        return object.map(present -> present.members().get(name))
                .filter(JsonText.class::isInstance)
                .map(json -> ((JsonText) json).value());
    }

    /** A text; empty when it is missing or refused. */
    String text(String name) {
        Optional<Json> json = find(name);
        return json.isEmpty() ? "" : text(path(name), field(name), json.get());
    }

    private String text(String at, Field field, Json json) {
        return text(at, field, json, findings);
    }

    /** The text of a field; empty when it is refused. */
    static String text(String at, Field field, Json json, Findings findings) {
        if (!(json instanceof JsonText text)) {
            findings.reportField(at, MessageKey.RIG_FIELD_TYPE, json.shown(), "a text in quotation marks");
            return "";
        }
        String value = text.value();
        boolean clean = value.codePoints()
                .allMatch(c -> Shown.isPrintable(c) || ("note".equals(at) && (c == '\n' || c == '\t')));
        if (!clean) {
            findings.reportField(at, MessageKey.RIG_TEXT_CONTROL, text.shown());
            return "";
        }
        boolean fits = field.kind() != Field.Kind.TEXT || field.allows(value.length());
        if (!fits || (value.isBlank() && field.allowedLow() > 0)) {
            int length = value.isBlank() ? 0 : value.length();
            reportCount(at, MessageKey.RIG_TEXT_LENGTH, length, field, findings);
            return "";
        }
        return value;
    }

    /** A list of texts; empty when it is missing or refused. */
    List<String> texts(String name) {
        List<String> texts = new ArrayList<>();
        int index = 0;
        for (Json item : items(name)) {
            String at = path(name) + "[" + index++ + "]";
            findings.saw(at, item);
            texts.add(text(at, field(name), item));
        }
        return texts;
    }

    /** One of the constants of a choice; null when it is missing or refused. */
    <E> E choice(String name, E[] constants, Function<E, String> id) {
        Optional<Json> json = find(name);
        if (json.isEmpty()) {
            return null;
        }
        if (!(json.get() instanceof JsonText text)) {
            String accepted = FieldWords.accepted(field(name));
            findings.reportField(
                    path(name), MessageKey.RIG_FIELD_TYPE, json.get().shown(), accepted);
            return null;
        }
        Optional<E> chosen = Arrays.stream(constants)
                .filter(constant -> id.apply(constant).equals(text.value()))
                .findFirst();
        if (chosen.isEmpty()) {
            reportChoice(path(name), text.value(), field(name).choices());
        }
        return chosen.orElse(null);
    }

    /** Reports a fault of a field of this object, whether it has it or not. */
    void report(String name, MessageKey key, String... values) {
        if (object.isPresent() && !misspelt.contains(name)) {
            findings.reportField(path(name), key, values);
        }
    }

    /** Reports a word that is not one of those accepted, with the nearest that is. */
    void reportChoice(String at, String found, Collection<String> accepted) {
        findings.reportChoice(at, found, accepted);
    }

    /** An object with fields of its own; one without anything in it when it is missing or refused. */
    Section object(String name) {
        Section section = objectOfKinds(name);
        section.reportUnknown(null);
        return section;
    }

    /** An object whose fields depend on its kind: the caller reads the kind and then reports unknown fields. */
    Section objectOfKinds(String name) {
        Optional<Json> json = find(name);
        Optional<JsonObject> found = Optional.empty();
        if (json.isPresent()) {
            found = asObject(path(name), json.get());
        }
        return new Section(found, path(name), catalogued(name), findings);
    }

    /** A list of objects; empty when it is missing or refused. */
    List<Section> list(String name) {
        List<Section> sections = listOfKinds(name);
        sections.forEach(section -> section.reportUnknown(null));
        return sections;
    }

    /** A list of objects whose fields depend on their kind. */
    List<Section> listOfKinds(String name) {
        List<Section> sections = new ArrayList<>();
        for (Json item : items(name)) {
            String at = path(name) + "[" + sections.size() + "]";
            findings.saw(at, item);
            sections.add(new Section(asObject(at, item), at, catalogued(name) + "[]", findings));
        }
        return sections;
    }

    /**
     * Reports every field that the object should not have.
     *
     * @param kind the kind of heat source or element; null when its fields do not depend on one or it is not known
     */
    void reportUnknown(String kind) {
        Map<String, Json> members = object.map(JsonObject::members).orElse(Map.of());
        List<Field> known = FieldCatalogue.children(inCatalogue);
        List<String> names = known.stream()
                .filter(field -> kind == null || field.belongsTo(kind))
                .map(Field::name)
                .toList();
        members.forEach((name, value) -> {
            if (!names.contains(name)) {
                reportUnknown(name, value, kind, known, names);
            }
        });
    }

    private void reportUnknown(String name, Json value, String kind, List<Field> known, List<String> names) {
        String at = path(Shown.plain(name));
        findings.saw(at, value);
        Optional<Field> elsewhere =
                known.stream().filter(field -> field.name().equals(name)).findFirst();
        if (elsewhere.isPresent()) {
            String kinds = Shown.list(elsewhere.get().variants());
            findings.reportField(at, MessageKey.RIG_FIELD_OF_ANOTHER_KIND, kind, kinds);
            return;
        }
        Optional<String> now = Migrations.pathNow(catalogued(name));
        if (now.isPresent()) {
            findings.reportField(at, MessageKey.RIG_FIELD_MOVED, now.get());
            return;
        }
        Optional<String> near = NearestSpelling.of(name, names);
        near.ifPresent(misspelt::add);
        near.ifPresentOrElse(
                word -> findings.reportField(at, MessageKey.RIG_FIELD_UNKNOWN_NEAR, Shown.list(names), word),
                () -> findings.reportField(at, MessageKey.RIG_FIELD_UNKNOWN, Shown.list(names)));
    }

    private List<Json> items(String name) {
        Optional<Json> json = find(name);
        if (json.isEmpty()) {
            return List.of();
        }
        Field field = field(name);
        if (!(json.get() instanceof JsonArray array)) {
            String accepted = FieldWords.accepted(field);
            findings.reportField(
                    path(name), MessageKey.RIG_FIELD_TYPE, json.get().shown(), accepted);
            return List.of();
        }
        int count = array.items().size();
        if (!field.allows(count)) {
            reportCount(path(name), MessageKey.RIG_LIST_LENGTH, count, field, findings);
            return List.of();
        }
        return array.items();
    }

    private Optional<JsonObject> asObject(String at, Json json) {
        if (json instanceof JsonObject found) {
            return Optional.of(found);
        }
        findings.reportField(at, MessageKey.RIG_FIELD_TYPE, json.shown(), "an object in braces");
        return Optional.empty();
    }

    /** Reports a number of characters or entries that the field does not take. */
    static void reportCount(String at, MessageKey key, int count, Field field, Findings findings) {
        String fewest = Integer.toString((int) field.allowedLow());
        String most = Integer.toString((int) field.allowedHigh());
        findings.reportField(at, key, Integer.toString(count), fewest, most);
    }

    /** The value of a field; when a field that is needed is missing, that is reported unless its misspelling was. */
    private Optional<Json> find(String name) {
        Optional<Json> json = object.map(present -> present.members().get(name));
        json.ifPresent(value -> findings.saw(path(name), value));
        Field field = field(name);
        if (json.isEmpty() && object.isPresent() && field.required() && !misspelt.contains(name)) {
            String meaning = FieldTexts.explanation(field);
            String accepted = FieldWords.accepted(field);
            findings.reportField(path(name), MessageKey.RIG_FIELD_MISSING, meaning, accepted);
        }
        return json;
    }

    private Field field(String name) {
        return FieldCatalogue.find(catalogued(name))
                .orElseThrow(() -> new IllegalStateException("the catalogue has no field " + catalogued(name)));
    }
}
