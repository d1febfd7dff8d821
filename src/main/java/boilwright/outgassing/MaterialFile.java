package boilwright.outgassing;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads one file of a material by walking its tree, so that every fault is found at once. */
final class MaterialFile {
    /** One Torr L/(s cm2), Pa m3/s per m2: 101325/760 Pa times 1e-3 m3 over 1e-4 m2. */
    static final double TORR_LITRE = PhysicalConstants.TORR_PA * 10;

    private static final String RATE = "Torr L/(s cm2)";
    private static final String SI_RATE = "Pa m3/(s m2)";
    private static final String PERMEABILITY = "m2/s";
    private static final String NUMBER = "1";
    private static final List<String> KINDS = List.of("metal", "glass", "elastomer", "plastic");
    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .build();

    private final String file;
    private final List<Message> faults = new ArrayList<>();

    private MaterialFile(String file) {
        this.file = file;
    }

    /**
     * The material of a file.
     *
     * @param file its name, for messages
     * @param content its bytes
     * @throws InputRefusedException naming every fault
     */
    static MaterialRecord read(String file, byte[] content) {
        MaterialFile reader = new MaterialFile(file);
        MaterialRecord material = reader.material(tree(file, content));
        if (!reader.faults.isEmpty()) {
            throw new InputRefusedException(reader.faults);
        }
        return material;
    }

    /** The tree of a JSON file, or a refusal that says where it is not JSON. */
    static JsonNode tree(String file, byte[] content) {
        try {
            return MAPPER.readTree(content);
        } catch (JacksonException e) {
            String line = e.getLocation() == null
                    ? "1"
                    : Integer.toString(e.getLocation().getLineNr());
            String column = e.getLocation() == null
                    ? "1"
                    : Integer.toString(e.getLocation().getColumnNr());
            throw new InputRefusedException(
                    Message.of(MessageKey.FLUID_FILE_NOT_JSON, file, line, column, e.getOriginalMessage()));
        }
    }

    private MaterialRecord material(JsonNode root) {
        String kind = text(root, "kind");
        if (!kind.isEmpty() && !KINDS.contains(kind)) {
            refuse("kind", root.path("kind"), "one of: " + String.join(", ", KINDS));
        }
        JsonNode outgassing = root.path("outgassing");
        return new MaterialRecord(
                text(root, "id"),
                text(root, "title"),
                kind,
                text(root, "mainSpecies"),
                figure(outgassing, "outgassing.", "afterOneHour", RATE),
                figure(outgassing, "outgassing.", "exponent", NUMBER),
                optional(root, "baked", RATE),
                figure(root, "", "dryGasShare", NUMBER),
                optional(root, "airPermeability", PERMEABILITY));
    }

    private String text(JsonNode parent, String name) {
        JsonNode node = parent.path(name);
        if (!node.isString() || node.stringValue().isBlank()) {
            refuse(name, node, "a text");
            return "";
        }
        return node.stringValue();
    }

    private Optional<MaterialRecord.Figure> optional(JsonNode parent, String name, String unit) {
        JsonNode node = parent.path(name);
        boolean absent = node.isString() && node.stringValue().equals("not-available");
        return absent ? Optional.empty() : Optional.ofNullable(figure(parent, "", name, unit));
    }

    private MaterialRecord.Figure figure(JsonNode parent, String path, String name, String unit) {
        JsonNode node = parent.path(name);
        if (!node.isObject()) {
            refuse(path + name, node, "an object with value, unit, low, high, source and where");
            return null;
        }
        String own = path + name + ".";
        double factor = factor(own, node.path("unit"), unit);
        double low = number(own, node, "low") * factor;
        double value = number(own, node, "value") * factor;
        double high = number(own, node, "high") * factor;
        if (!(low <= value && value <= high)) {
            refuse(own + "value", node.path("value"), "a number between low and high");
        }
        return new MaterialRecord.Figure(
                value,
                low,
                high,
                text(node, "source"),
                text(node, "where"),
                node.path("from memory").asBoolean(false));
    }

    private double factor(String path, JsonNode node, String unit) {
        String found = node.isString() ? node.stringValue() : "";
        if (found.equals(unit)) {
            return unit.equals(RATE) ? TORR_LITRE : 1;
        }
        if (unit.equals(RATE) && found.equals(SI_RATE)) {
            return 1;
        }
        refuse(path + "unit", node, unit.equals(RATE) ? RATE + " or " + SI_RATE : unit);
        return Double.NaN;
    }

    private double number(String path, JsonNode parent, String name) {
        JsonNode node = parent.path(name);
        if (!node.isNumber() || !(node.doubleValue() >= 0) || !Double.isFinite(node.doubleValue())) {
            refuse(path + name, node, "a number of zero or more");
            return Double.NaN;
        }
        return node.doubleValue();
    }

    private void refuse(String path, JsonNode node, String accepted) {
        String shown = node.isMissingNode() ? "nothing" : node.toString();
        faults.add(Message.of(MessageKey.FLUID_FIELD_REFUSED, file, path, shown, accepted));
    }
}
