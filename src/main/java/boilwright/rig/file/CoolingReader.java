package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Place;
import boilwright.rig.ElementKind;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Material;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.rig.TypicalValues;
import java.util.List;

/** Reads the cooling and its elements, whose fields depend on their kind. */
final class CoolingReader {

    private CoolingReader() {}

    /** The cooling; its supply is null when that is missing or of no known kind. */
    static Cooling read(Section in, double roomK) {
        return new Cooling(
                supply(in.objectOfKinds("supply"), roomK),
                in.listOfKinds("elements").stream().map(CoolingReader::element).toList());
    }

    /** One element; one of no known kind was reported and only keeps its place, so that later ones keep their number. */
    private static Cooling.Element element(Section in) {
        ElementKind kind = in.choice("kind", ElementKind.values(), ElementKind::id);
        in.reportUnknown(kind == null ? null : kind.id());
        Place place = new Place(in.text("name"), in.text("branch"));
        if (kind == null) {
            return new Cooling.Jacket(List.of(), Double.NaN, Double.NaN, place);
        }
        return switch (kind) {
            case JACKET ->
                new Cooling.Jacket(in.texts("covers"), in.quantity("gap"), in.quantity("shellThickness"), place);
            case SOLDERED_COIL ->
                new Cooling.SolderedCoil(
                        in.texts("covers"),
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", TypicalValues.BOND_CONDUCTANCE),
                        place);
            case CAP_COIL ->
                new Cooling.CapCoil(
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("bondConductance", TypicalValues.BOND_CONDUCTANCE),
                        place);
            case BAFFLE_COIL -> part(Cooling.Part.BAFFLE, in, place);
            case FORELINE_TRAP -> part(Cooling.Part.FORELINE_TRAP, in, place);
            case HOSE ->
                new Cooling.Hose(
                        in.quantity("tubeInnerDiameter"),
                        in.quantity("tubeLength"),
                        in.quantityOr("airConductancePerMetre", TypicalValues.HOSE_TO_AIR),
                        place);
            case VALVE -> new Cooling.Valve(in.quantity("flowAtOneBar"), place);
            case RISE -> new Cooling.Rise(in.quantity("height"), place);
        };
    }

    private static Cooling.CooledPart part(Cooling.Part what, Section in, Place place) {
        return new Cooling.CooledPart(
                what,
                in.quantity("tubeInnerDiameter"),
                in.quantity("tubeLength"),
                in.quantityOr("heatLoad", 0),
                in.quantityOr("airConductance", TypicalValues.PART_TO_AIR),
                place);
    }

    private static final List<String> RATING = List.of(
            "capacity",
            "ratedWaterTemperature",
            "ratedRoomTemperature",
            "capacityPerWaterKelvin",
            "capacityPerRoomKelvin");

    /**
     * The supply; null when it is missing or of no known kind.
     *
     * @param roomK the room's temperature, K
     */
    static Supply supply(Section in, double roomK) {
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
