package boilwright.dashboard.session;

import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.GasSide;
import boilwright.rig.TypicalValues;
import boilwright.rig.file.RigFields;
import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Values to start from when a part or a field is added to a rig: the middle of what is usual, to be changed by the person. */
public final class FieldDefaults {
    private static final String CAPACITY_TABLE = "cooling.supply.capacityTable";
    private static final String ELEMENTS = "cooling.elements";

    private FieldDefaults() {}

    /** The typical value of a quantity, SI; where none is known the middle of its usual range, to two figures in its usual unit. */
    public static double typical(Field field) {
        return switch (field.path()) {
            case ELEMENTS + "[].gap" -> TypicalValues.JACKET_GAP_M;
            case ELEMENTS + "[].tubeInnerDiameter" -> TypicalValues.COIL_BORE_M;
            default -> middle(field);
        };
    }

    private static double middle(Field field) {
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
            case QUANTITY ->
                ChillerFields.isRating(path) && fields.has(CAPACITY_TABLE)
                        ? ChillerFields.withRating(fields)
                        : fields.with(path, typical(field));
            case CHOICE -> fields.with(path, field.choices().get(0));
            case TEXT -> text(fields, path);
            case TEXT_LIST ->
                fields.with(path, path.equals("protection.battery.keeps") ? List.of("water") : uncovered(fields));
            case LIST -> list(fields, path, field);
            default -> required(fields, path, "");
        };
    }

    private static RigFields list(RigFields fields, String path, Field field) {
        if (path.equals(CAPACITY_TABLE)) {
            return ChillerFields.withTable(fields);
        }
        boolean gas = path.startsWith("vacuum.") || path.startsWith("foreline.") || path.startsWith("protection.");
        if (!gas) {
            return fields;
        }
        // a list that may be empty begins so; one that must not, with one entry of usual values
        RigFields begun = fields.with(path, List.of());
        return field.allowedLow() < 1 ? begun : required(begun.appended(path), path + "[0]", "");
    }

    /** Whether a person is offered to add a field that a rig does not have: one offer for what comes together. */
    public static boolean mayBeAdded(RigFields fields, String path) {
        boolean withTheCapacity = ChillerFields.isRating(path) && !path.equals("cooling.supply.capacity");
        return !withTheCapacity || !fields.has(CAPACITY_TABLE);
    }

    /** Whether a rig does without a field that it has, on its own. */
    public static boolean mayBeLeftOut(String path) {
        return !FieldCatalogue.find(path).orElseThrow().required() && !ChillerFields.isNeeded(path);
    }

    /** Words to start from on the gas side: a piece's name that no other has, a material, a place of the gauge. */
    private static Optional<String> ofGasSide(RigFields fields, String path) {
        String name = path.substring(path.lastIndexOf('.') + 1);
        if (path.startsWith("vacuum.gauge")) {
            return Optional.of(GasSide.Gauge.AT_CHAMBER);
        }
        boolean gas = path.startsWith("vacuum.") || path.startsWith("foreline.");
        if (gas && name.equals("material")) {
            return Optional.of(path.contains(".seals[") ? "fkm" : "stainless-steel");
        }
        if (!gas || !name.equals("name")) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>();
        for (String list : List.of("vacuum.line", "vacuum.roughing", "foreline.line")) {
            for (int i = 0; i < fields.count(list); i++) {
                names.add(fields.text(list + "[" + i + "].name").orElse(""));
            }
        }
        String entry = path.substring(0, path.lastIndexOf('.'));
        return Optional.of(free(names, fields.text(entry + ".kind").orElse("piece")));
    }

    /** A name of an element that no other has; two branches where one begins; else an empty text. */
    private static RigFields text(RigFields fields, String path) {
        Optional<String> gas = ofGasSide(fields, path);
        if (gas.isPresent()) {
            return fields.with(path, gas.get());
        }
        boolean ofElement = path.startsWith(ELEMENTS + "[");
        if (ofElement && path.endsWith(".branch")) {
            return Branches.begun(fields, path);
        }
        if (!ofElement) {
            return fields.with(path, "");
        }
        String entry = path.substring(0, path.lastIndexOf('.'));
        List<String> names = new ArrayList<>();
        for (int i = 0; i < fields.count(ELEMENTS); i++) {
            names.add(fields.text(ELEMENTS + "[" + i + "].name").orElse(""));
        }
        return fields.with(path, free(names, fields.text(entry + ".kind").orElse("element")));
    }

    private static String free(List<String> names, String base) {
        int number = 1;
        while (names.contains(base + " " + number)) {
            number++;
        }
        return base + " " + number;
    }

    /**
     * A rig's fields with one more entry at the end of a list whose entries come in kinds.
     *
     * @param list path of the list
     * @param kind kind of the new entry
     */
    public static RigFields newEntry(RigFields fields, String list, String kind) {
        String entry = list + "[" + fields.count(list) + "]";
        return required(fields.appended(list).with(entry + ".kind", kind), entry, kind);
    }

    /** A rig's fields without an entry of a list or a part, and without what makes no sense any more then. */
    public static RigFields takenAway(RigFields fields, String path) {
        RigFields less = fields.without(path);
        return path.startsWith(ELEMENTS) ? Branches.tidied(less) : less;
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
            case "vacuum.line", "vacuum.roughing", "foreline.line" -> text(more, next + ".name");
            case ELEMENTS -> more.without(next + ".name");
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
        double middle = Math.rint((below + height) / 2 * 1000) / 1000;
        List<String> all = new ArrayList<>(names);
        all.add(names.get(index) + " 1");
        return more.with("stages[" + index + "].name", free(all, names.get(index)))
                .with("stages[" + index + "].height", middle);
    }

    /** The names of the stages that no element covers, bottom to top; of all when each is covered. */
    private static List<String> uncovered(RigFields fields) {
        List<String> names = new ArrayList<>(stageNames(fields));
        for (int i = 0; i < fields.count(ELEMENTS); i++) {
            names.removeAll(fields.texts(ELEMENTS + "[" + i + "].covers"));
        }
        return names.isEmpty() ? stageNames(fields) : names;
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
