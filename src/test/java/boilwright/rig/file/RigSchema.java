package boilwright.rig.file;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.SupplyKind;
import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The published JSON Schema of rig files, made from the catalogue for editors that check while one types. It knows fields,
 * words and units; ranges and whether parts fit one another are checked by the reader, because quantities are texts.
 */
public final class RigSchema {
    private static final String NUMBER = "[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?";

    private final SharedSchemas shared = new SharedSchemas();

    private RigSchema() {}

    /** The schema's text, draft 2020-12. */
    public static String text() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:boilwright:rig:" + Migrations.CURRENT.newest());
        schema.put("title", "Boilwright rig");
        RigSchema rig = new RigSchema();
        rig.object(schema, "");
        rig.shared.close(schema);
        return RigWriter.text(schema);
    }

    /**
     * The schema of files of heat sources, draft 2020-12: what a rig's heat source may hold, with a name, a source and ranges.
     */
    public static String sourcesText() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("$id", "urn:boilwright:heat-sources:" + SourceFileReader.FORMAT);
        schema.put("title", "Boilwright heat sources");
        closed(schema, List.of("format", "sources"));
        ObjectNode properties = (ObjectNode) schema.get("properties");
        properties.putObject("format").put("const", SourceFileReader.FORMAT);
        ObjectNode list = properties.putObject("sources");
        list.put("type", "array").put("minItems", 1).put("maxItems", SourceFileReader.MOST);
        ObjectNode source = list.putObject("items");
        closed(source, List.of("id", "title", "heatSource"));
        ObjectNode members = (ObjectNode) source.get("properties");
        words(members.putObject("id"), SourceFileReader.LONGEST_TITLE).put("pattern", "^" + SourceFileReader.ID + "$");
        words(members.putObject("title"), SourceFileReader.LONGEST_TITLE);
        words(members.putObject("source"), SourceFileReader.LONGEST_TEXT);
        words(members.putObject("note"), SourceFileReader.LONGEST_TEXT);
        members.putObject("from memory").put("type", "boolean");
        RigSchema parts = new RigSchema();
        parts.object(members.putObject("heatSource"), "heatSource");
        ObjectNode ranges = members.putObject("ranges");
        closed(ranges, List.of());
        FieldCatalogue.children("heatSource").stream()
                .filter(field -> field.kind() == Field.Kind.QUANTITY)
                .forEach(field -> {
                    ObjectNode pair = ((ObjectNode) ranges.get("properties")).putObject(field.name());
                    pair.put("type", "array").put("minItems", 2).put("maxItems", 2);
                    parts.quantity(pair.putObject("items"), field);
                });
        parts.shared.close(schema);
        return RigWriter.text(schema);
    }

    private static void closed(ObjectNode schema, List<String> required) {
        schema.put("type", "object").put("additionalProperties", false);
        if (!required.isEmpty()) {
            required.forEach(schema.putArray("required")::add);
        }
        schema.putObject("properties");
    }

    private static ObjectNode words(ObjectNode schema, int longest) {
        return schema.put("type", "string").put("minLength", 1).put("maxLength", longest);
    }

    private void object(ObjectNode schema, String path) {
        List<Field> fields = FieldCatalogue.children(path);
        List<String> kinds = fields.stream()
                .filter(field -> "kind".equals(field.name()))
                .flatMap(field -> field.choices().stream())
                .toList();
        schema.put("type", "object");
        if (kinds.isEmpty()) {
            members(schema, fields);
            return;
        }
        ArrayNode alternatives = schema.putArray("oneOf");
        for (String kind : kinds) {
            ObjectNode alternative = alternatives.addObject();
            alternative.put("title", kind);
            members(
                    alternative,
                    fields.stream().filter(field -> field.belongsTo(kind)).toList());
            if (kind.equals(SupplyKind.CHILLER.id())) {
                either(
                        alternative,
                        List.of("capacity", "ratedWaterTemperature", "ratedRoomTemperature"),
                        List.of("capacityTable"));
            }
            ObjectNode properties = (ObjectNode) alternative.get("properties");
            ObjectNode kindNode = (ObjectNode) properties.get("kind");
            kindNode.remove("enum");
            kindNode.put("const", kind);
        }
    }

    private void members(ObjectNode schema, List<Field> fields) {
        schema.put("additionalProperties", false);
        List<String> required =
                fields.stream().filter(Field::required).map(Field::name).toList();
        if (!required.isEmpty()) {
            required.forEach(schema.putArray("required")::add);
        }
        ObjectNode properties = schema.putObject("properties");
        fields.forEach(field -> field(properties.putObject(field.name()), field));
        if (fields.stream().anyMatch(field -> field.path().equals("schedule[].power"))) {
            either(schema, List.of("power"), List.of("holdOil"));
        }
    }

    /** Either these fields or those, never both. */
    private static void either(ObjectNode schema, List<String> these, List<String> those) {
        ArrayNode either = schema.putArray("oneOf");
        these.forEach(either.addObject().putArray("required")::add);
        those.forEach(either.addObject().putArray("required")::add);
    }

    private void field(ObjectNode schema, Field field) {
        schema.put("title", FieldTexts.title(field));
        schema.put("description", description(field));
        switch (field.kind()) {
            case QUANTITY -> quantity(schema, field);
            case TEXT -> text(schema, field);
            case CHOICE -> field.choices().forEach(schema.put("type", "string").putArray("enum")::add);
            case INTEGER ->
                schema.put("type", "integer")
                        .put("minimum", (int) field.allowedLow())
                        .put("maximum", (int) field.allowedHigh());
            case LIST -> entries(list(schema, field), field.path());
            case TEXT_LIST -> list(schema, field).put("type", "string").put("minLength", 1);
            case OBJECT -> object(schema, field.path());
        }
        // A kind is narrowed to one word afterwards, where its part is made.
        if (!"kind".equals(field.name())) {
            shared.name(schema, field.textKey());
        }
    }

    /** The entries of a list; lists whose entries have the same texts hold the same things. */
    private void entries(ObjectNode schema, String path) {
        object(schema, path);
        String text = FieldCatalogue.children(path).get(0).textKey();
        shared.name(schema, text.substring(0, text.lastIndexOf('.')));
    }

    private static String description(Field field) {
        String explanation = FieldTexts.explanation(field);
        if (field.kind() != Field.Kind.QUANTITY) {
            return explanation;
        }
        return explanation + " Accepted: " + FieldWords.value(field, field.allowedLow()) + " to "
                + FieldWords.value(field, field.allowedHigh()) + ".";
    }

    private void quantity(ObjectNode schema, Field field) {
        Dimension dimension = field.dimension().orElseThrow();
        List<UnitSpelling> units = new ArrayList<>(UnitTable.accepted(dimension));
        boolean plain = FieldWords.unit(field).isPlain();
        String name = dimension == Dimension.FRACTION && !plain
                ? "percentage"
                : dimension.name().toLowerCase(Locale.ROOT).replace('_', '-');
        if (field.path().equals("schedule[].power")) {
            units.addAll(UnitTable.accepted(Dimension.POWER));
            name = "percentage-or-power";
        }
        ObjectNode quantity = schema.objectNode();
        if (plain) {
            quantity.putArray("type").add("number").add("string");
        } else {
            quantity.put("type", "string");
        }
        String spellings = units.stream()
                .map(unit -> unit.isPlain() ? "" : escaped(unit.text()))
                .collect(Collectors.joining("|"));
        quantity.put("pattern", "^\\s*" + NUMBER + "\\s*(" + spellings + ")\\s*$");
        shared.refer(schema, name, quantity);
    }

    private static String escaped(String unit) {
        return Pattern.compile("[()/.^$*+?\\[\\]{}|\\\\]").matcher(unit).replaceAll("\\\\$0");
    }

    private static void text(ObjectNode schema, Field field) {
        schema.put("type", "string");
        schema.put("minLength", (int) field.allowedLow());
        schema.put("maxLength", (int) field.allowedHigh());
    }

    private static ObjectNode list(ObjectNode schema, Field field) {
        schema.put("type", "array");
        schema.put("minItems", (int) field.allowedLow());
        schema.put("maxItems", (int) field.allowedHigh());
        return schema.putObject("items");
    }
}
