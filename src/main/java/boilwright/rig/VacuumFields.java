package boilwright.rig;

import static boilwright.units.Dimension.ANGLE;
import static boilwright.units.Dimension.AREA;
import static boilwright.units.Dimension.FRACTION;
import static boilwright.units.Dimension.GAS_FLOW;
import static boilwright.units.Dimension.LENGTH;
import static boilwright.units.Dimension.PRESSURE;
import static boilwright.units.Dimension.TEMPERATURE;
import static boilwright.units.Dimension.TIME;
import static boilwright.units.Dimension.VOLUME;
import static boilwright.units.Dimension.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The fields of the gas side: foreline with backing pump, chamber, line and gauge; and of what protects the pump. */
final class VacuumFields {
    private static final String GAUGES = "gauges and backing pumps, common practice";
    private static final String CHAMBERS = "chambers from a glass bulb to a coating plant, from memory";
    private static final String TESTS = "from a helium leak test to an open valve, common practice";
    private static final String GIVEN = ForelineKind.GIVEN_PRESSURE.id();
    private static final String BACKING = ForelineKind.BACKING_PUMP.id();
    private static final String TUBE = PieceKind.TUBE.id();
    private static final String HOSE = PieceKind.HOSE.id();
    private static final String ELBOW = PieceKind.ELBOW.id();
    private static final String REDUCER = PieceKind.REDUCER.id();
    private static final String VALVE = PieceKind.VALVE.id();
    private static final String COIL = PieceKind.OPAQUE_COIL.id();
    private static final String CHEVRON = PieceKind.CHEVRON.id();
    private static final String LOUVRE = PieceKind.LOUVRE.id();
    /** The steepest bend of which figures exist, rad. */
    private static final double STEEPEST = Math.toRadians(120.001);

    private VacuumFields() {}

    static List<Field> foreline() {
        List<Field> all = new ArrayList<>(new FieldSet("foreline")
                .choice("kind", FieldCatalogue.ids(ForelineKind.values()))
                .only(GIVEN)
                .quantityFrom("backing pumps, common practice", "pressure", PRESSURE, "mTorr", 1e-3, 1.1e5, 0.1, 200)
                .only(BACKING)
                .list("line", 0, 20)
                .quantityFrom(CHAMBERS, "volume", VOLUME, "L", 1e-6, 10, 5e-5, 0.2)
                .object("pump")
                .fields());
        all.addAll(pieces("foreline.line[]"));
        all.addAll(new FieldSet("foreline.pump")
                .quantityFrom(GAUGES, "ultimate", PRESSURE, "Pa", 1e-4, 2e4, 1e-3, 50)
                .choice("gasBallast", FieldCatalogue.ids(Foreline.Ballast.values()))
                .optional()
                .quantityFrom(GAUGES, "ballastUltimate", PRESSURE, "Pa", 1e-4, 2e4, 1e-2, 500)
                .optional()
                .list("curve", 1, 40)
                .fields());
        all.addAll(new FieldSet("foreline.pump.curve[]")
                .quantityFrom(GAUGES, "pressure", PRESSURE, "Pa", 1e-3, 1.2e5, 0.05, 1.1e5)
                .quantityFrom(GAUGES, "speed", VOLUME_FLOW, "m3/h", 1e-6, 2, 5e-5, 0.15)
                .fields());
        return all;
    }

    static List<Field> vacuum() {
        List<Field> all = new ArrayList<>(new FieldSet("vacuum")
                .object("chamber")
                .list("line", 0, 30)
                .object("gauge")
                .optional()
                .list("roughing", 0, 20)
                .optional()
                .quantityFrom(GAUGES, "target", PRESSURE, "Pa", 1e-10, 100, 1e-8, 10)
                .optional()
                .fields());
        all.addAll(new FieldSet("vacuum.chamber")
                .quantityFrom(CHAMBERS, "volume", VOLUME, "L", 1e-6, 100, 5e-5, 3)
                .quantityFrom("minutes to years, common practice", "sinceAir", TIME, "h", 0, 1e9, 60, 4e7)
                .choice("filledWith", FieldCatalogue.ids(GasSide.Exposure.values()))
                .list("surfaces", 0, 40)
                .list("seals", 0, 40)
                .optional()
                .quantityFrom(TESTS, "leak", GAS_FLOW, "Pa m3/s", 0, 10, 1e-11, 1e-2)
                .optional()
                .fields());
        all.addAll(new FieldSet("vacuum.chamber.surfaces[]")
                .text("material", 1, 80)
                .quantityFrom(CHAMBERS, "area", AREA, "cm2", 1e-6, 1000, 1e-4, 40)
                .choice("treatment", FieldCatalogue.ids(GasSide.Treatment.values()))
                .optional()
                .fields());
        all.addAll(new FieldSet("vacuum.chamber.seals[]")
                .text("material", 1, 80)
                .quantityFrom(CHAMBERS, "ringDiameter", LENGTH, "mm", 1e-3, 5, 4e-3, 1.5)
                .quantityFrom(CHAMBERS, "cordDiameter", LENGTH, "mm", 2e-4, 0.05, 8e-4, 0.015)
                .fields());
        all.addAll(pieces("vacuum.line[]"));
        all.addAll(new FieldSet("vacuum.gauge")
                .text("at", 1, 40)
                .choice("kind", FieldCatalogue.ids(GasSide.GaugeKind.values()))
                .quantityFrom(GAUGES, "lowest", PRESSURE, "Pa", 1e-12, 1e5, 1e-10, 1000)
                .optional()
                .quantityFrom(GAUGES, "highest", PRESSURE, "Pa", 1e-10, 2e6, 1e-4, 2e5)
                .optional()
                .quantityFrom(
                        "sensitivities of ion gauges relative to air, from memory",
                        "gasFactor",
                        FRACTION,
                        "1",
                        0.05,
                        20,
                        0.05,
                        20)
                .optional()
                .fields());
        all.addAll(pieces("vacuum.roughing[]"));
        return all;
    }

    /** The fields of a piece of a line; the same in every list. */
    private static List<Field> pieces(String list) {
        return new FieldSet(list, "piece")
                .choice(
                        "kind",
                        Arrays.stream(PieceKind.values()).map(PieceKind::id).toArray(String[]::new))
                .text("name", 1, 40)
                .quantity("innerDiameter", LENGTH, "mm", 1e-4, 3, 8e-4, 0.8)
                .only(TUBE, HOSE, ELBOW, REDUCER, VALVE)
                .quantity("length", LENGTH, "mm", 0, 100, 2e-3, 15)
                .only(REDUCER)
                .quantity("outletDiameter", LENGTH, "mm", 1e-4, 3, 1.2e-3, 0.9)
                .only(ELBOW)
                .quantityFrom("bends of which figures exist", "angle", ANGLE, "deg", 0, STEEPEST, 0, STEEPEST)
                .only(COIL, CHEVRON, LOUVRE)
                .quantity("vaneDepth", LENGTH, "mm", 5e-4, 1, 2e-3, 0.2)
                .quantity("vanePitch", LENGTH, "mm", 5e-4, 1, 1e-3, 0.2)
                .quantityFrom(
                        "baffles of which figures exist",
                        "vaneAngle",
                        ANGLE,
                        "deg",
                        Math.toRadians(29.999),
                        Math.toRadians(60.001),
                        Math.toRadians(29.999),
                        Math.toRadians(60.001))
                .optional()
                .only(VALVE)
                .quantityFrom(CHAMBERS, "conductance", VOLUME_FLOW, "L/s", 1e-7, 100, 1e-5, 10)
                .optional()
                .only()
                .text("material", 1, 80)
                .optional()
                .quantityFrom(TESTS, "leak", GAS_FLOW, "Pa m3/s", 0, 10, 1e-11, 1e-2)
                .optional()
                .fields();
    }

    static List<Field> protection() {
        List<Field> all = new ArrayList<>(new FieldSet("protection")
                .list("trips", 0, 20)
                .object("battery")
                .optional()
                .fields());
        String[] hot = {
            FieldCatalogue.id(Protection.TripKind.BOILER_TEMPERATURE),
            FieldCatalogue.id(Protection.TripKind.BODY_TEMPERATURE),
            FieldCatalogue.id(Protection.TripKind.WATER_TEMPERATURE)
        };
        all.addAll(new FieldSet("protection.trips[]")
                .choice("kind", FieldCatalogue.ids(Protection.TripKind.values()))
                .only(hot)
                .quantityFrom(FieldSet.JUDGEMENT, "temperature", TEMPERATURE, "degC", 280, 900, 293, 750)
                .only(FieldCatalogue.id(Protection.TripKind.WATER_FLOW))
                .quantityFrom(FieldSet.JUDGEMENT, "flow", VOLUME_FLOW, "L/min", 1e-7, 0.01, 1e-6, 5e-4)
                .only(FieldCatalogue.id(Protection.TripKind.FORELINE_PRESSURE))
                .quantityFrom(FieldSet.JUDGEMENT, "pressure", PRESSURE, "Pa", 0.1, 1e4, 1, 500)
                .only()
                .quantityFrom(FieldSet.JUDGEMENT, "delay", TIME, "s", 0, 3600, 0.1, 600)
                .optional()
                .fields());
        all.addAll(new FieldSet("protection.battery")
                .textList("keeps", 1, 3)
                .quantityFrom(FieldSet.JUDGEMENT, "lasts", TIME, "min", 1, 1e6, 30, 2e5)
                .fields());
        return all;
    }
}
