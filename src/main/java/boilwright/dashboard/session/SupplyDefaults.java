package boilwright.dashboard.session;

import boilwright.errors.InputRefusedException;
import boilwright.fluid.Water;
import boilwright.rig.Body;
import boilwright.rig.Cooling;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Stage;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.rig.TypicalValues;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import boilwright.water.CircuitSolver;
import boilwright.water.OperatingPoint;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A believable supply of another kind for the same pump, to start from: one that brings about the flow and the temperature that
 * were there before. Figures without a measure of the rig in them are engineering judgement, from memory.
 */
public final class SupplyDefaults {
    private static final UnitSpelling LITRES_A_MINUTE =
            UnitTable.find("L/min", Dimension.VOLUME_FLOW).orElseThrow();

    private static final double BAR = 1e5;
    private static final double MAINS_PA = 3 * BAR;
    private static final double LEAST_HEAD_M = 0.5;

    private final Rig rig;
    private final double temperatureK;
    private final double flowM3PerS;
    private final double dropPa;

    private SupplyDefaults(Rig rig) {
        this.rig = rig;
        Supply supply = rig.cooling().supply();
        boolean water = !(supply instanceof Supply.FinsAndFan);
        temperatureK = water ? supply.temperatureK() : TypicalValues.WATER_INLET_K;
        OperatingPoint point = point(rig);
        boolean flows = point != null && point.volumeFlowM3PerS() > 0;
        double usual = TypicalValues.waterFlowM3PerS(rig.heatSource().ratedPowerW());
        flowM3PerS = litres(flows ? point.volumeFlowM3PerS() : usual);
        dropPa = flows ? point.circuitDropPa() : 0;
    }

    private static OperatingPoint point(Rig rig) {
        try {
            return CircuitSolver.operatingPoint(rig);
        } catch (InputRefusedException notLifted) {
            // The new supply gets a usual flow then.
            return null;
        }
    }

    /**
     * A rig's cooling by a supply of a kind. Air needs no elements, and water gets one around the body when there was none.
     *
     * @param kind the new kind
     * @param rig the rig as it is
     */
    public static Cooling of(SupplyKind kind, Rig rig) {
        SupplyDefaults defaults = new SupplyDefaults(rig);
        Supply supply = defaults.supply(kind);
        List<Cooling.Element> elements = new ArrayList<>(rig.cooling().elements());
        if (supply instanceof Supply.FinsAndFan) {
            elements.clear();
        } else if (elements.isEmpty()) {
            elements.add(defaults.element());
        }
        return new Cooling(supply, elements);
    }

    private Supply supply(SupplyKind kind) {
        return switch (kind) {
            case GIVEN_FLOW -> new Supply.GivenFlow(temperatureK, flowM3PerS, OptionalDouble.empty());
            case CHILLER -> chiller();
            case TAP -> new Supply.Tap(temperatureK, MAINS_PA, lineFlow());
            case TANK ->
                new Supply.Tank(
                        Math.max(Water.FREEZING_K, temperatureK),
                        0.02,
                        0,
                        Supply.Tank.bucketToAir(0.02),
                        pump(TypicalValues.TANK_PUMP_HEAT_W));
            case FINS_AND_FAN ->
                new Supply.FinsAndFan(rig.room().temperatureK(), 3, 0.004, 0.02, 0.001, Material.ALUMINIUM);
        };
    }

    private Supply chiller() {
        double rated = rounded(rig.heatSource().ratedPowerW());
        Supply.RatedCapacity capacity = new Supply.RatedCapacity(
                rated,
                temperatureK,
                rig.room().temperatureK(),
                rounded(TypicalValues.CAPACITY_PER_WATER_K * rated),
                rounded(TypicalValues.CAPACITY_PER_ROOM_K * rated));
        return new Supply.Chiller(
                temperatureK,
                capacity,
                Supply.Control.MODULATING,
                TypicalValues.CHILLER_BAND_MODULATING_K,
                0.004,
                pump(TypicalValues.CHILLER_PUMP_HEAT_W));
    }

    /** Flow that a line passes at 1 bar when it brings the flow that was there before. */
    private double lineFlow() {
        double left = Math.max(0.1 * MAINS_PA, MAINS_PA - dropPa);
        return litres(flowM3PerS / Math.sqrt(left / BAR));
    }

    /** A parabola through the flow that was there before, with half as much head again when nothing flows. */
    private Supply.Pump pump(double heatW) {
        double head = rounded(
                Math.max(LEAST_HEAD_M, dropPa / (Water.density(temperatureK) * PhysicalConstants.STANDARD_GRAVITY)));
        return new Supply.Pump(
                List.of(
                        new Supply.CurvePoint(0, rounded(1.5 * head)),
                        new Supply.CurvePoint(flowM3PerS, head),
                        new Supply.CurvePoint(litres(Math.sqrt(3) * flowM3PerS), 0)),
                heatW);
    }

    /** A jacket around glass, a coil soldered to metal, over all jets from the top down. */
    private Cooling.Element element() {
        Body body = rig.body();
        List<String> names =
                new ArrayList<>(rig.stages().stream().map(Stage::name).toList());
        Collections.reverse(names);
        if (body.material().isGlass()) {
            return new Cooling.Jacket(names, TypicalValues.JACKET_GAP_M, body.wallThicknessM());
        }
        double turn = Math.PI * (body.innerDiameterM() + 2 * body.wallThicknessM());
        return new Cooling.SolderedCoil(
                names,
                TypicalValues.COIL_BORE_M,
                rounded(turn * rig.column().heightM() / TypicalValues.COIL_PITCH_M),
                TypicalValues.BOND_CONDUCTANCE);
    }

    /** A flow with two figures in litres a minute. */
    private static double litres(double flowM3PerS) {
        return LITRES_A_MINUTE.toSi(rounded(LITRES_A_MINUTE.fromSi(flowM3PerS)));
    }

    /** Two significant figures: more would look measured. */
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(2)).doubleValue();
    }
}
