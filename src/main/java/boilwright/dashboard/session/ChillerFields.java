package boilwright.dashboard.session;

import boilwright.fluid.Water;
import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** What a chiller carries away, changed from a rating into a table and back: a rig has one of them. */
final class ChillerFields {
    private static final String AT = "cooling.supply.";
    private static final String TABLE = AT + "capacityTable";
    private static final Set<String> NEEDED =
            Set.of(AT + "capacity", AT + "ratedWaterTemperature", AT + "ratedRoomTemperature");
    private static final Set<String> SLOPES = Set.of(AT + "capacityPerWaterKelvin", AT + "capacityPerRoomKelvin");
    /** How far a new table reaches on both sides, K. */
    private static final double REACH_K = 10;

    private ChillerFields() {}

    /** Whether a field is part of a rating. */
    static boolean isRating(String path) {
        return NEEDED.contains(path) || SLOPES.contains(path);
    }

    /** Whether a rating needs the field. */
    static boolean isNeeded(String path) {
        return NEEDED.contains(path);
    }

    /** A rig's fields with a table of the same capacities, around the set point and the room, in place of the rating. */
    static RigFields withTable(RigFields fields) {
        double water = value(fields, AT + "setPoint");
        double room = value(fields, "room.temperature");
        List<List<Double>> rows = new ArrayList<>();
        for (double roomK : new double[] {room - REACH_K, room + REACH_K}) {
            for (double waterK : ends(water)) {
                rows.add(List.of(waterK, roomK, Math.max(1, Math.rint(rated(fields, waterK, roomK)))));
            }
        }
        RigFields changed = fields;
        for (String path : NEEDED) {
            changed = changed.without(path);
        }
        for (String path : SLOPES) {
            changed = changed.without(path);
        }
        return changed.withRows(TABLE, rows);
    }

    /** The set point lies between them; water does not freeze. */
    private static double[] ends(double waterK) {
        return new double[] {Math.max(Water.FREEZING_K, waterK - REACH_K), waterK + REACH_K};
    }

    private static double rated(RigFields fields, double waterK, double roomK) {
        return value(fields, AT + "capacity")
                + value(fields, AT + "capacityPerWaterKelvin") * (waterK - value(fields, AT + "ratedWaterTemperature"))
                - value(fields, AT + "capacityPerRoomKelvin") * (roomK - value(fields, AT + "ratedRoomTemperature"));
    }

    /** A rig's fields with a rating at set point and room in place of the table: the capacity of its nearest entry. */
    static RigFields withRating(RigFields fields) {
        double water = value(fields, AT + "setPoint");
        double room = value(fields, "room.temperature");
        double nearest = Double.POSITIVE_INFINITY;
        double capacity = Double.NaN;
        for (int i = 0; i < fields.count(TABLE); i++) {
            String entry = TABLE + "[" + i + "].";
            double away = Math.hypot(value(fields, entry + "water") - water, value(fields, entry + "room") - room);
            if (away < nearest) {
                nearest = away;
                capacity = value(fields, entry + "capacity");
            }
        }
        RigFields changed = fields.without(TABLE);
        Map<String, Double> rating = Map.of(
                AT + "capacity", capacity,
                AT + "ratedWaterTemperature", water,
                AT + "ratedRoomTemperature", room);
        for (Map.Entry<String, Double> field : rating.entrySet()) {
            changed = changed.with(field.getKey(), field.getValue());
        }
        return changed;
    }

    private static double value(RigFields fields, String path) {
        OptionalDouble value = fields.quantity(path);
        return value.orElseThrow(() -> new IllegalStateException("the chiller has no " + path));
    }
}
