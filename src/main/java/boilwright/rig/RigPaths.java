package boilwright.rig;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The paths of the fields that one rig has, with the numbers of list entries: {@code stages[1].throatGap}. */
public final class RigPaths {
    /** What names or describes the file and says nothing of the pump. */
    private static final Set<String> NOT_OF_THE_PUMP = Set.of(
            "format",
            "name",
            "note",
            "guesses",
            "session",
            "stages[].name",
            "cooling.elements[].name",
            "vacuum.line[].name",
            "vacuum.roughing[].name",
            "foreline.line[].name");

    private final Rig rig;
    private final List<String> paths = new ArrayList<>();

    private RigPaths(Rig rig) {
        this.rig = rig;
    }

    /**
     * Every field that says something of the pump and holds a value of its own, in the order of the catalogue. Fields that a
     * file may leave out are among them; those of another kind of heat source, supply or cooling element are not.
     *
     * @param rig the rig; its heat source or supply may be null while a faulty file is read, fields of every kind are given
     *     then
     */
    public static List<String> of(Rig rig) {
        RigPaths paths = new RigPaths(rig);
        paths.collect("", "");
        return List.copyOf(paths.paths);
    }

    private void collect(String parent, String kind) {
        for (Field field : FieldCatalogue.children(parent)) {
            String path = parent.isEmpty() ? field.name() : parent + "." + field.name();
            if (!NOT_OF_THE_PUMP.contains(FieldCatalogue.general(path)) && (kind.isEmpty() || field.belongsTo(kind))) {
                collect(field, path);
            }
        }
    }

    private void collect(Field field, String path) {
        switch (field.kind()) {
            case OBJECT -> {
                if (has(path)) {
                    collect(path, kind(path));
                }
            }
            case LIST -> {
                for (int i = 0; i < count(path); i++) {
                    collect(path + "[" + i + "]", entryKind(path, i));
                }
            }
            default -> paths.add(path);
        }
    }

    private boolean has(String object) {
        return switch (object) {
            case "topCap" -> rig.topCap().isPresent();
            case "heatSource.cartridge" ->
                rig.heatSource() != null && rig.heatSource().cartridge().isPresent();
            case "vacuum" -> rig.vacuum().isPresent();
            case "vacuum.gauge" -> rig.vacuum().orElseThrow().gauge().isPresent();
            case "protection" -> !rig.protection().equals(Protection.NONE);
            case "protection.battery" -> rig.protection().battery().forS() > 0;
            default -> true;
        };
    }

    private int count(String list) {
        return switch (list) {
            case "column.segments" -> rig.column().segments().size();
            case "stages" -> rig.stages().size();
            case "schedule" -> rig.schedule().steps().size();
            case "cooling.elements" -> rig.cooling().elements().size();
            case "cooling.supply.pumpCurve" -> curvePoints();
            case "cooling.supply.capacityTable" -> tableEntries();
            default -> list.startsWith("protection.") ? rig.protection().trips().size() : gasSide(list);
        };
    }

    private int curvePoints() {
        return rig.cooling().supply() instanceof Supply.Pumped pumped
                ? pumped.pump().curve().size()
                : 0;
    }

    private int tableEntries() {
        return rig.cooling().supply() instanceof Supply.Chiller chiller
                        && chiller.capacity() instanceof Supply.CapacityTable table
                ? table.points().size()
                : 0;
    }

    private int gasSide(String list) {
        return switch (list) {
            case "foreline.pump.curve" ->
                rig.foreline() instanceof Foreline.Backing backing
                        ? backing.pump().curve().size()
                        : 0;
            case "vacuum.chamber.surfaces" ->
                rig.vacuum().orElseThrow().chamber().surfaces().size();
            case "vacuum.chamber.seals" ->
                rig.vacuum().orElseThrow().chamber().seals().size();
            default -> pieces(list).size();
        };
    }

    private List<LinePiece> pieces(String list) {
        return switch (list) {
            case "foreline.line" -> rig.foreline() instanceof Foreline.Backing backing ? backing.line() : List.of();
            case "vacuum.line" -> rig.vacuum().orElseThrow().line();
            case "vacuum.roughing" -> rig.vacuum().orElseThrow().roughing();
            default -> throw new IllegalStateException("the catalogue has a new list: " + list);
        };
    }

    private String entryKind(String list, int index) {
        return switch (list) {
            case "cooling.elements" -> elementKind(index);
            case "protection.trips" ->
                FieldCatalogue.id(rig.protection().trips().get(index).kind());
            case "foreline.line", "vacuum.line", "vacuum.roughing" ->
                pieces(list).get(index).kind().id();
            default -> "";
        };
    }

    /** The kind of an object that comes in kinds; empty for one that does not, or whose kind was refused. */
    private String kind(String object) {
        if ("heatSource".equals(object) && rig.heatSource() != null) {
            return rig.heatSource().kind().id();
        }
        if ("foreline".equals(object) && rig.foreline() != null) {
            return rig.foreline().kind().id();
        }
        boolean supply = "cooling.supply".equals(object) && rig.cooling().supply() != null;
        return supply ? rig.cooling().supply().kind().id() : "";
    }

    private String elementKind(int index) {
        return rig.cooling().elements().get(index).kind().id();
    }
}
