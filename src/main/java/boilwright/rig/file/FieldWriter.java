package boilwright.rig.file;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Fills one object of a rig file, each quantity in the unit that the catalogue names for its field. */
final class FieldWriter {
    private final ObjectNode node;
    private final String path;

    private FieldWriter(ObjectNode node, String path) {
        this.node = node;
        this.path = path;
    }

    static FieldWriter root() {
        return new FieldWriter(JsonNodeFactory.instance.objectNode(), "");
    }

    /** Changes an object that is filled already. */
    static FieldWriter at(ObjectNode node, String path) {
        return new FieldWriter(node, path);
    }

    ObjectNode node() {
        return node;
    }

    FieldWriter number(String name, int value) {
        node.put(name, value);
        return this;
    }

    FieldWriter text(String name, String value) {
        node.put(name, value);
        return this;
    }

    FieldWriter texts(String name, List<String> values) {
        values.forEach(list(name)::add);
        return this;
    }

    FieldWriter quantity(String name, double si) {
        Field field = FieldCatalogue.find(path(name)).orElseThrow();
        UnitSpelling unit = FieldWords.unit(field);
        if (unit.isPlain()) {
            node.put(name, new BigDecimal(QuantityWriter.exact(si, unit)));
        } else {
            node.put(name, exact(si, unit));
        }
        return this;
    }

    FieldWriter optional(String name, OptionalDouble si) {
        si.ifPresent(value -> quantity(name, value));
        return this;
    }

    /** The object of that name, made when it is not there yet. */
    FieldWriter object(String name) {
        ObjectNode child = node.has(name) ? (ObjectNode) node.get(name) : node.putObject(name);
        return new FieldWriter(child, path(name));
    }

    /** A new object at the end of the list of that name. */
    FieldWriter entry(String name) {
        return new FieldWriter(list(name).addObject(), path(name) + "[]");
    }

    /** The list of that name, made when it is not there yet. */
    ArrayNode list(String name) {
        return node.has(name) ? (ArrayNode) node.get(name) : node.putArray(name);
    }

    private String path(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Exact in the usual unit where its conversion allows that; else in the SI unit, which always does. */
    private static String exact(double si, UnitSpelling unit) {
        String usual = QuantityWriter.exact(si, unit);
        boolean same = QuantityReader.read(usual, unit.dimension()) instanceof Reading.Read read && read.si() == si;
        return same
                ? usual
                : QuantityWriter.exact(
                        si,
                        UnitTable.find(unit.dimension().siUnit(), unit.dimension())
                                .orElseThrow());
    }
}
