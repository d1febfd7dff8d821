package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Material;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.rig.TypicalValues;
import java.util.List;

/** Reads where the cooling comes from, whose fields depend on its kind. */
final class SupplyReader {

    private static final List<String> RATING = List.of(
            "capacity",
            "ratedWaterTemperature",
            "ratedRoomTemperature",
            "capacityPerWaterKelvin",
            "capacityPerRoomKelvin");

    private SupplyReader() {}

    /**
     * The supply; null when it is missing or of no known kind.
     *
     * @param roomK the room's temperature, K
     */
    static Supply read(Section in, double roomK) {
        SupplyKind kind = in.choice("kind", SupplyKind.values(), SupplyKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        if (kind == null) {
            return null;
        }
        return switch (kind) {
            case GIVEN_FLOW ->
                new Supply.GivenFlow(
                        in.quantity("inletTemperature"), in.quantity("flow"), in.optionalQuantity("chillerCapacity"));
            case CHILLER -> chiller(in);
            case TAP ->
                new Supply.Tap(
                        in.quantity("inletTemperature"),
                        in.quantity("staticPressure"),
                        in.quantity("lineFlowAtOneBar"));
            case TANK -> tank(in);
            case FINS_AND_FAN ->
                new Supply.FinsAndFan(
                        in.quantityOr("airTemperature", roomK),
                        in.quantity("airSpeed"),
                        in.quantity("finPitch"),
                        in.quantity("finHeight"),
                        in.quantity("finThickness"),
                        in.choice("finMaterial", Material.values(), Material::id));
        };
    }

    private static Supply chiller(Section in) {
        Supply.Control control = in.choice("control", Supply.Control.values(), FieldCatalogue::id);
        return new Supply.Chiller(
                in.quantity("setPoint"),
                capacity(in),
                control,
                in.quantityOr("hysteresis", usualBand(control)),
                in.quantity("tankVolume"),
                pump(in, TypicalValues.CHILLER_PUMP_HEAT_W));
    }

    private static double usualBand(Supply.Control control) {
        return control == Supply.Control.ON_OFF
                ? TypicalValues.CHILLER_BAND_ON_OFF_K
                : TypicalValues.CHILLER_BAND_MODULATING_K;
    }

    /** A table or a rating; what a file has of both or of neither is reported. */
    private static Supply.Capacity capacity(Section in) {
        List<String> rating = RATING.stream().filter(in::has).toList();
        if (in.has("capacityTable")) {
            rating.forEach(name -> in.report(name, MessageKey.RIG_CAPACITY_TWICE));
            return new Supply.CapacityTable(in.list("capacityTable").stream()
                    .map(entry -> new Supply.CapacityPoint(
                            entry.quantity("water"), entry.quantity("room"), entry.quantity("capacity")))
                    .toList());
        }
        double rated = needed(in, "capacity");
        return new Supply.RatedCapacity(
                rated,
                needed(in, "ratedWaterTemperature"),
                needed(in, "ratedRoomTemperature"),
                in.quantityOr("capacityPerWaterKelvin", TypicalValues.CAPACITY_PER_WATER_K * rated),
                in.quantityOr("capacityPerRoomKelvin", TypicalValues.CAPACITY_PER_ROOM_K * rated));
    }

    private static double needed(Section in, String name) {
        if (!in.has(name)) {
            in.report(name, MessageKey.RIG_CAPACITY_MISSING);
        }
        return in.quantityOr(name, Double.NaN);
    }

    private static Supply tank(Section in) {
        double volume = in.quantity("volume");
        return new Supply.Tank(
                in.quantity("startTemperature"),
                volume,
                in.quantityOr("ice", 0),
                in.quantityOr("airConductance", Supply.Tank.bucketToAir(volume)),
                pump(in, TypicalValues.TANK_PUMP_HEAT_W));
    }

    private static Supply.Pump pump(Section in, double usualHeat) {
        return new Supply.Pump(
                in.list("pumpCurve").stream()
                        .map(point -> new Supply.CurvePoint(point.quantity("flow"), point.quantity("head")))
                        .toList(),
                in.quantityOr("pumpHeat", usualHeat));
    }
}
