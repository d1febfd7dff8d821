package boilwright.rig;

import static boilwright.units.Dimension.LENGTH;
import static boilwright.units.Dimension.MASS;
import static boilwright.units.Dimension.POWER;
import static boilwright.units.Dimension.PRESSURE;
import static boilwright.units.Dimension.SPEED;
import static boilwright.units.Dimension.TEMPERATURE;
import static boilwright.units.Dimension.TEMPERATURE_DIFFERENCE;
import static boilwright.units.Dimension.THERMAL_CONDUCTANCE;
import static boilwright.units.Dimension.THERMAL_CONDUCTIVITY;
import static boilwright.units.Dimension.VOLUME;
import static boilwright.units.Dimension.VOLUME_FLOW;
import static boilwright.units.PhysicalConstants.ZERO_CELSIUS_K;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The fields of the cooling: its supply and the elements that the water passes. */
final class CoolingFields {
    private static final String WATER = "water between freezing and boiling";
    private static final String ROOMS = "rooms in which people work";
    private static final String CHILLERS =
            "data sheets of chillers from 50 W to 20 kW, from memory; engineering judgement";
    private static final String PUMPS =
            "curves of pumps from aquariums to small heating circuits, from memory; engineering judgement";
    private static final String MAINS = "water mains of houses, common practice";
    private static final String TANKS = "buckets, barrels and cisterns, common practice";
    private static final String FINS = "finned metal cylinders and their fans, from memory; engineering judgement";
    private static final String VALVES =
            "valves, filters and flow meters for hoses, from memory; engineering judgement";
    private static final String HEIGHTS = "heights of benches and houses, common practice";

    private static final String GIVEN = SupplyKind.GIVEN_FLOW.id();
    private static final String CHILLER = SupplyKind.CHILLER.id();
    private static final String TAP = SupplyKind.TAP.id();
    private static final String TANK = SupplyKind.TANK.id();
    private static final String FAN = SupplyKind.FINS_AND_FAN.id();
    private static final String JACKET = ElementKind.JACKET.id();
    private static final String COIL = ElementKind.SOLDERED_COIL.id();
    private static final String CAP = ElementKind.CAP_COIL.id();
    private static final String BAFFLE = ElementKind.BAFFLE_COIL.id();
    private static final String TRAP = ElementKind.FORELINE_TRAP.id();
    private static final String HOSE = ElementKind.HOSE.id();
    private static final String VALVE = ElementKind.VALVE.id();
    private static final String RISE = ElementKind.RISE.id();

    /** One litre a minute, m3/s. */
    private static final double LITRE_A_MINUTE = 1e-3 / 60;

    private CoolingFields() {}

    static List<Field> all() {
        List<Field> all = new ArrayList<>();
        all.addAll(
                new FieldSet("cooling").object("supply").list("elements", 0, 40).fields());
        all.addAll(supply());
        all.addAll(new FieldSet("cooling.supply.capacityTable[]")
                .quantityFrom(CHILLERS, "water", TEMPERATURE, "degC", ZERO_CELSIUS_K, 333.15, 275, 313)
                .quantityFrom(ROOMS, "room", TEMPERATURE, "degC", 253.15, 333.15, 278.15, 323.15)
                .quantityFrom(CHILLERS, "capacity", POWER, "W", 1, 1e6, 50, 20e3)
                .fields());
        all.addAll(new FieldSet("cooling.supply.pumpCurve[]")
                .quantityFrom(
                        PUMPS,
                        "flow",
                        VOLUME_FLOW,
                        "L/min",
                        0,
                        1000 * LITRE_A_MINUTE,
                        0.05 * LITRE_A_MINUTE,
                        60 * LITRE_A_MINUTE)
                .quantityFrom(PUMPS, "head", LENGTH, "m", 0, 150, 0.05, 60)
                .fields());
        all.addAll(elements());
        return all;
    }

    private static List<Field> supply() {
        return new FieldSet("cooling.supply")
                .choice(
                        "kind",
                        Arrays.stream(SupplyKind.values()).map(SupplyKind::id).toArray(String[]::new))
                .only(GIVEN, TAP)
                .quantityFrom(WATER, "inletTemperature", TEMPERATURE, "degC", ZERO_CELSIUS_K, 368.15, 275, 313)
                .only(GIVEN)
                .quantity("flow", VOLUME_FLOW, "L/min", 0, 200e-3 / 60, 0.05e-3 / 60, 25e-3 / 60)
                .quantity("chillerCapacity", POWER, "W", 1, 1e6, 50, 20e3)
                .optional()
                .only(CHILLER)
                .quantityFrom(CHILLERS, "setPoint", TEMPERATURE, "degC", ZERO_CELSIUS_K, 333.15, 275, 313)
                .quantityFrom(CHILLERS, "capacity", POWER, "W", 1, 1e6, 50, 20e3)
                .optional()
                .quantityFrom(CHILLERS, "ratedWaterTemperature", TEMPERATURE, "degC", ZERO_CELSIUS_K, 333.15, 275, 313)
                .optional()
                .quantityFrom(CHILLERS, "ratedRoomTemperature", TEMPERATURE, "degC", 253.15, 333.15, 278.15, 323.15)
                .optional()
                .quantityFrom(CHILLERS, "capacityPerWaterKelvin", THERMAL_CONDUCTANCE, "W/K", 0, 1e5, 0.5, 1500)
                .optional()
                .quantityFrom(CHILLERS, "capacityPerRoomKelvin", THERMAL_CONDUCTANCE, "W/K", 0, 1e5, 0.2, 800)
                .optional()
                .list("capacityTable", 1, 200)
                .optional()
                .choice("control", FieldCatalogue.ids(Supply.Control.values()))
                .quantityFrom(CHILLERS, "hysteresis", TEMPERATURE_DIFFERENCE, "K", 0.01, 20, 0.05, 8)
                .optional()
                .quantityFrom(CHILLERS, "tankVolume", VOLUME, "L", 1e-4, 5, 3e-4, 0.3)
                .only(TAP)
                .quantityFrom(MAINS, "staticPressure", PRESSURE, "bar", 1e3, 2e6, 3e4, 1e6)
                .quantityFrom(
                        MAINS,
                        "lineFlowAtOneBar",
                        VOLUME_FLOW,
                        "L/min",
                        0.02 * LITRE_A_MINUTE,
                        2000 * LITRE_A_MINUTE,
                        0.5 * LITRE_A_MINUTE,
                        150 * LITRE_A_MINUTE)
                .only(TANK)
                .quantityFrom(
                        WATER, "startTemperature", TEMPERATURE, "degC", ZERO_CELSIUS_K, 368.15, ZERO_CELSIUS_K, 313)
                .quantityFrom(TANKS, "volume", VOLUME, "L", 5e-4, 100, 2e-3, 2)
                .quantityFrom(TANKS, "ice", MASS, "kg", 0, 1e5, 0.1, 500)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "airConductance", THERMAL_CONDUCTANCE, "W/K", 0, 2000, 0.1, 100)
                .optional()
                .only(CHILLER, TANK)
                .quantityFrom(PUMPS, "pumpHeat", POWER, "W", 0, 1e4, 0.5, 800)
                .optional()
                .list("pumpCurve", 2, 40)
                .only(FAN)
                .quantityFrom(ROOMS, "airTemperature", TEMPERATURE, "degC", 253.15, 333.15, ZERO_CELSIUS_K, 318.15)
                .optional()
                .quantityFrom(FINS, "airSpeed", SPEED, "m/s", 0, 60, 0.2, 15)
                .quantityFrom(FINS, "finPitch", LENGTH, "mm", 3e-4, 0.2, 1e-3, 0.025)
                .quantityFrom(FINS, "finHeight", LENGTH, "mm", 1e-3, 0.5, 3e-3, 0.1)
                .quantityFrom(FINS, "finThickness", LENGTH, "mm", 5e-5, 0.02, 2e-4, 6e-3)
                .material("finMaterial")
                .fields();
    }

    private static List<Field> elements() {
        return new FieldSet("cooling.elements[]")
                .choice(
                        "kind",
                        Arrays.stream(ElementKind.values()).map(ElementKind::id).toArray(String[]::new))
                .text("name", 1, 40)
                .optional()
                .text("branch", 1, 40)
                .optional()
                .only(JACKET, COIL)
                .textList("covers", 1, 12)
                .only(JACKET)
                .quantity("gap", LENGTH, "mm", 2e-4, 0.1, 1e-3, 0.025)
                .quantity("shellThickness", LENGTH, "mm", 1e-4, 0.05, 5e-4, 0.012)
                .only(COIL, CAP, BAFFLE, TRAP, HOSE)
                .quantity("tubeInnerDiameter", LENGTH, "mm", 1e-3, 0.1, 3e-3, 0.025)
                .quantity("tubeLength", LENGTH, "m", 0.01, 200, 0.1, 30)
                .only(COIL, CAP)
                .quantityFrom(FieldSet.JUDGEMENT, "bondConductance", THERMAL_CONDUCTIVITY, "W/(m K)", 0.1, 1000, 1, 200)
                .optional()
                .only(BAFFLE, TRAP)
                .quantityFrom(FieldSet.JUDGEMENT, "heatLoad", POWER, "W", 0, 1e5, 0.1, 2000)
                .optional()
                .quantityFrom(FieldSet.JUDGEMENT, "airConductance", THERMAL_CONDUCTANCE, "W/K", 0, 500, 0.005, 20)
                .optional()
                .only(HOSE)
                .quantityFrom(
                        FieldSet.JUDGEMENT, "airConductancePerMetre", THERMAL_CONDUCTIVITY, "W/(m K)", 0, 50, 0.02, 5)
                .optional()
                .only(VALVE)
                .quantityFrom(
                        VALVES,
                        "flowAtOneBar",
                        VOLUME_FLOW,
                        "m3/h",
                        2e-4 / 3600,
                        200.0 / 3600,
                        0.05 / 3600,
                        15.0 / 3600)
                .only(RISE)
                .quantityFrom(HEIGHTS, "height", LENGTH, "m", -60, 60, -12, 12)
                .fields();
    }
}
