package boilwright.rig.file;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.HeatSource;
import boilwright.rig.OfferedSource;
import boilwright.rig.OfferedSource.FigureRange;
import boilwright.rig.file.Json.JsonArray;
import boilwright.rig.file.Json.JsonNumber;
import boilwright.rig.file.Json.JsonObject;
import boilwright.rig.file.Json.JsonText;
import boilwright.rig.file.Json.JsonWord;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads a file of heat sources against the catalogue of a rig's fields; every fault of the file is told at once. */
final class SourceFileReader {
    /** The version of the format. */
    static final int FORMAT = 1;

    /** Most sources in one file. */
    static final int MOST = 200;

    static final int LONGEST_TITLE = 100;
    static final int LONGEST_TEXT = 1000;
    static final String ID = "[a-z0-9]+(-[a-z0-9]+)*";
    private static final List<String> OF_FILE = List.of("format", "sources");
    private static final List<String> OF_SOURCE =
            List.of("id", "title", "source", "from memory", "note", "heatSource", "ranges");
    private static final String HEAT_SOURCE = "heatSource";

    private final Findings findings;
    private final UnaryOperator<String> citation;
    private final Set<String> taken;
    private final Set<String> misspelt = new HashSet<>();

    private SourceFileReader(Findings findings, UnaryOperator<String> citation, Set<String> taken) {
        this.findings = findings;
        this.citation = citation;
        this.taken = new HashSet<>(taken);
    }

    /**
     * The sources of a file.
     *
     * @param text the file's text, not blank
     * @param findings names the file and takes its faults
     * @param citation words of a citation's key
     * @param taken ids that are taken already
     * @throws boilwright.errors.InputRefusedException with every fault found
     */
    static List<OfferedSource> read(String text, Findings findings, UnaryOperator<String> citation, Set<String> taken) {
        Json json = JsonReader.read(text, findings);
        List<OfferedSource> sources = new SourceFileReader(findings, citation, taken).file(json);
        if (!findings.isClean()) {
            throw findings.refusal();
        }
        return sources;
    }

    private List<OfferedSource> file(Json json) {
        List<OfferedSource> sources = new ArrayList<>();
        if (!(json instanceof JsonObject file)) {
            findings.reportAt(json.at(), MessageKey.SOURCES_NOT_AN_OBJECT, json.shown());
            return sources;
        }
        findings.saw("", file);
        unknown(file, "", OF_FILE);
        format(file);
        Json list = member(file, "", "sources", "a list of heat sources in brackets");
        if (list instanceof JsonArray array
                && !array.items().isEmpty()
                && array.items().size() <= MOST) {
            for (int i = 0; i < array.items().size(); i++) {
                source(array.items().get(i), "sources[" + i + "]").ifPresent(sources::add);
            }
        } else if (list != null) {
            findings.reportField(
                    "sources", MessageKey.RIG_FIELD_TYPE, list.shown(), "a list of 1 to " + MOST + " heat sources");
        }
        return sources;
    }

    private void format(JsonObject file) {
        Json format = member(file, "", "format", Integer.toString(FORMAT));
        boolean known = format instanceof JsonNumber number && number.literal().equals(Integer.toString(FORMAT));
        if (format != null && !known) {
            findings.reportField("format", MessageKey.RIG_FIELD_TYPE, format.shown(), Integer.toString(FORMAT));
        }
    }

    private Optional<OfferedSource> source(Json json, String at) {
        findings.saw(at, json);
        if (!(json instanceof JsonObject object)) {
            findings.reportField(at, MessageKey.RIG_FIELD_TYPE, json.shown(), "an object in braces");
            return Optional.empty();
        }
        unknown(object, at, OF_SOURCE);
        String id = text(object, at, "id", true, LONGEST_TITLE);
        if (!id.isEmpty() && !id.matches(ID)) {
            findings.reportField(
                    at + ".id",
                    MessageKey.RIG_FIELD_TYPE,
                    Shown.quoted(id),
                    "small letters, digits and single hyphens, such as my-hot-plate");
        } else if (!id.isEmpty() && !taken.add(id)) {
            findings.reportField(at + ".id", MessageKey.SOURCES_ID_TAKEN, Shown.quoted(id));
        }
        String title = text(object, at, "title", true, LONGEST_TITLE);
        String source = text(object, at, "source", false, LONGEST_TEXT);
        String note = text(object, at, "note", false, LONGEST_TEXT);
        HeatSource heat = heatSource(object, at);
        List<FigureRange> ranges = ranges(object, at, heat);
        return heat == null
                ? Optional.empty()
                : Optional.of(new OfferedSource(
                        id, title, heat, citation.apply(source), flag(object, at, "from memory"), note, ranges));
    }

    private HeatSource heatSource(JsonObject object, String at) {
        Json heat = member(object, at, HEAT_SOURCE, "an object as the heatSource of a rig");
        if (heat instanceof JsonObject described) {
            return HeatSourceFields.read(Section.ofKinds(described, at + "." + HEAT_SOURCE, HEAT_SOURCE, findings));
        }
        if (heat != null) {
            findings.reportField(
                    at + "." + HEAT_SOURCE, MessageKey.RIG_FIELD_TYPE, heat.shown(), "an object in braces");
        }
        return null;
    }

    private List<FigureRange> ranges(JsonObject object, String at, HeatSource heat) {
        List<FigureRange> list = new ArrayList<>();
        Json json = object.members().get("ranges");
        String path = at + ".ranges";
        if (json == null) {
            return list;
        }
        findings.saw(path, json);
        if (!(json instanceof JsonObject ranges)) {
            findings.reportField(path, MessageKey.RIG_FIELD_TYPE, json.shown(), "an object in braces");
            return list;
        }
        String kind = heat == null ? null : heat.kind().id();
        List<Field> fields = FieldCatalogue.children(HEAT_SOURCE).stream()
                .filter(f -> f.kind() == Field.Kind.QUANTITY && (kind == null || f.belongsTo(kind)))
                .toList();
        unknown(ranges, path, fields.stream().map(Field::name).toList());
        for (Field field : fields) {
            Json pair = ranges.members().get(field.name());
            if (pair != null) {
                range(field, pair, path + "." + field.name()).ifPresent(list::add);
            }
        }
        return list;
    }

    private Optional<FigureRange> range(Field field, Json json, String path) {
        findings.saw(path, json);
        if (!(json instanceof JsonArray pair) || pair.items().size() != 2) {
            findings.reportField(path, MessageKey.RIG_FIELD_TYPE, json.shown(), "two quantities, the lower first");
            return Optional.empty();
        }
        double low = end(field, path + "[0]", pair.items().get(0));
        double high = end(field, path + "[1]", pair.items().get(1));
        if (low >= high) {
            findings.reportField(
                    path,
                    MessageKey.SOURCES_RANGE_REVERSED,
                    pair.items().get(0).shown(),
                    pair.items().get(1).shown());
            return Optional.empty();
        }
        return Optional.of(new FigureRange(field.name(), field.dimension().orElseThrow(), low, high));
    }

    private double end(Field field, String path, Json json) {
        findings.saw(path, json);
        return QuantityField.read(field, path, json, findings);
    }

    private void unknown(JsonObject object, String at, List<String> known) {
        for (Map.Entry<String, Json> member : object.members().entrySet()) {
            String name = member.getKey();
            if (known.contains(name)) {
                continue;
            }
            String path = path(at, Shown.plain(name));
            findings.saw(path, member.getValue());
            Optional<String> nearest = NearestSpelling.of(name, known);
            nearest.ifPresent(near -> misspelt.add(path(at, near)));
            nearest.ifPresentOrElse(
                    near -> findings.reportField(path, MessageKey.RIG_FIELD_UNKNOWN_NEAR, Shown.list(known), near),
                    () -> findings.reportField(path, MessageKey.RIG_FIELD_UNKNOWN, Shown.list(known)));
        }
    }

    /** A member that is needed; null when it is missing, which is reported. */
    private Json member(JsonObject object, String at, String name, String accepted) {
        Json json = object.members().get(name);
        String path = path(at, name);
        if (json != null) {
            findings.saw(path, json);
        } else if (!misspelt.contains(path)) {
            findings.reportField(path, MessageKey.SOURCES_FIELD_MISSING, accepted);
        }
        return json;
    }

    private String text(JsonObject object, String at, String name, boolean needed, int longest) {
        String accepted = "a text of 1 to " + longest + " printable characters";
        Json json =
                needed ? member(object, at, name, accepted) : object.members().get(name);
        if (json == null) {
            return "";
        }
        String path = path(at, name);
        findings.saw(path, json);
        if (json instanceof JsonText text
                && !text.value().isBlank()
                && text.value().length() <= longest
                && text.value().codePoints().allMatch(Shown::isPrintable)) {
            return text.value();
        }
        findings.reportField(path, MessageKey.RIG_FIELD_TYPE, json.shown(), accepted);
        return "";
    }

    private boolean flag(JsonObject object, String at, String name) {
        Json json = object.members().get(name);
        if (json == null) {
            return false;
        }
        findings.saw(path(at, name), json);
        if (json instanceof JsonWord word && !word.word().equals("null")) {
            return word.word().equals("true");
        }
        findings.reportField(path(at, name), MessageKey.RIG_FIELD_TYPE, json.shown(), "true or false");
        return false;
    }

    private static String path(String at, String name) {
        return at.isEmpty() ? name : at + "." + name;
    }

    /** A refusal of a file that is a folder. */
    static Message isFolder(String file) {
        return Message.of(MessageKey.SOURCES_FILE_IS_FOLDER, file);
    }
}
