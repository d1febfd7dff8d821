package boilwright.dashboard.session;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Values to start from when a part or a field is added to a rig: the middle of what is usual, to be changed by the person. */
public final class FieldDefaults {
    private FieldDefaults() {}

    /** The middle of a quantity's usual range, SI, to two figures in its usual unit. */
    public static double typical(Field field) {
        double low = field.typicalLow();
        double high = field.typicalHigh();
        boolean wide = low > 0 && field.dimension().orElseThrow() != Dimension.TEMPERATURE;
        double middle = wide ? Math.sqrt(low * high) : (low + high) / 2;
        UnitSpelling unit =
                UnitTable.find(field.unit(), field.dimension().get()).orElseThrow();
        double rounded =
                new BigDecimal(unit.fromSi(middle)).round(new MathContext(2)).doubleValue();
        return unit.toSi(rounded);
    }

    /**
     * A rig's fields with one field or part added.
     *
     * @param path what is added: a quantity, a choice, a text or a part with fields of its own
     */
    public static RigFields added(RigFields fields, String path) {
        Field field = FieldCatalogue.find(path).orElseThrow();
        return switch (field.kind()) {
            case QUANTITY -> fields.with(path, typical(field));
            case CHOICE -> fields.with(path, field.choices().get(0));
            case TEXT -> fields.with(path, "");
            case TEXT_LIST -> fields.with(path, stageNames(fields));
            default -> required(fields, path, "");
        };
    }

    /**
     * A rig's fields with one part made another kind: fields that both kinds have stay, new ones get values to start from.
     *
     * @param part path of the part, an entry of a list
     * @param kind its new kind
     */
    public static RigFields ofKind(RigFields fields, String part, String kind) {
        RigFields changed = fields.with(part + ".kind", kind);
        for (Field field : FieldCatalogue.children(part)) {
            String path = part + "." + field.name();
            if (!field.belongsTo(kind)) {
                changed = changed.without(path);
            }
        }
        return required(changed, part, kind);
    }

    private static RigFields required(RigFields fields, String part, String kind) {
        RigFields filled = fields;
        for (Field field : FieldCatalogue.children(part)) {
            String path = part + "." + field.name();
            boolean belongs = kind.isEmpty() || field.belongsTo(kind);
            if (field.required() && belongs && !filled.has(path)) {
                filled = added(filled, path);
            }
        }
        return filled;
    }

    /**
     * A rig's fields with one more entry in a list, made from an entry that is there: a later step, a jet between its
     * neighbours under a name of its own, a cooling element that covers what no other does.
     *
     * @param entry path of the entry, with its number
     */
    public static RigFields oneMore(RigFields fields, String entry) {
        RigFields more = fields.repeated(entry);
        String list = entry.substring(0, entry.lastIndexOf('['));
        int index = Integer.parseInt(entry.substring(entry.lastIndexOf('[') + 1, entry.length() - 1));
        String next = list + "[" + (index + 1) + "]";
        return switch (list) {
            case "schedule" -> later(more, entry, next, list + "[" + (index + 2) + "]");
            case "stages" -> between(more, index);
            default -> more;
        };
    }

    private static RigFields later(RigFields more, String entry, String next, String after) {
        double at = more.quantity(entry + ".at").orElse(0);
        double step = more.has(after) ? (more.quantity(after + ".at").orElse(at) - at) / 2 : 300;
        return more.with(next + ".at", at + Math.max(1, Math.rint(step)));
    }

    /** The copy goes below the jet it was made from: above the top jet there is no column. */
    private static RigFields between(RigFields more, int index) {
        double height = more.quantity("stages[" + index + "].height").orElseThrow();
        double below = index == 0
                ? 0
                : more.quantity("stages[" + (index - 1) + "].height").orElseThrow();
        List<String> names = stageNames(more);
        String base = names.get(index);
        int number = 2;
        while (names.contains(base + " " + number)) {
            number++;
        }
        double middle = Math.rint((below + height) / 2 * 1000) / 1000;
        return more.with("stages[" + index + "].name", base + " " + number)
                .with("stages[" + index + "].height", middle);
    }

    /** The names of a rig's stages, bottom to top. */
    public static List<String> stageNames(RigFields fields) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < fields.count("stages"); i++) {
            names.add(fields.text("stages[" + i + "].name").orElse(""));
        }
        return names;
    }
}
