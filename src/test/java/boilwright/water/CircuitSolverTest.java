package boilwright.water;

import static boilwright.water.Plumbing.LITRE_PER_MINUTE;
import static boilwright.water.Plumbing.WATER_K;
import static boilwright.water.Plumbing.given;
import static boilwright.water.Plumbing.hose;
import static boilwright.water.Plumbing.rig;
import static boilwright.water.Plumbing.rise;
import static boilwright.water.Plumbing.tank;
import static boilwright.water.Plumbing.tap;
import static boilwright.water.Plumbing.valve;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.Water;
import boilwright.rig.Cooling;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Circuits whose answer can be had by hand. */
class CircuitSolverTest {
    private static final double DENSITY = Water.density(WATER_K);
    private static final double VISCOSITY = Water.viscosity(WATER_K);
    private static final double GRAVITY = 9.80665;

    private static OperatingPoint point(Rig rig) {
        return CircuitSolver.operatingPoint(rig);
    }

    private static double litres(OperatingPoint point) {
        return point.volumeFlowM3PerS() / LITRE_PER_MINUTE;
    }

    /** Poiseuille's law, the exact solution of laminar flow in a tube. */
    @Test
    void aLongThinTubeFollowsPoiseuille() {
        double bore = 0.004;
        double flow = 0.1 * LITRE_PER_MINUTE;
        OperatingPoint point = point(rig(given(0.1), hose(bore, 3, "")));
        double speed = flow / (Math.PI / 4 * bore * bore);
        double friction = 128 * VISCOSITY * 3 * flow / (Math.PI * Math.pow(bore, 4));
        double ends = 1.5 * DENSITY * speed * speed / 2;
        assertThat(point.circuitDropPa()).isCloseTo(friction + ends, within(1e-9 * friction));
        assertThat(point.elements().get(0).reynolds().orElseThrow())
                .isCloseTo(DENSITY * speed * bore / VISCOSITY, withinPercentage(1e-9));
        assertThat(point.massFlowKgPerS()).isCloseTo(DENSITY * flow, withinPercentage(1e-12));
        assertThat(point.supplyHeadPa()).isEmpty();
    }

    /** Flow between parallel plates, dp = 12 mu L Q/(w s^3): the exact solution that a narrow gap comes close to. */
    @Test
    void aNarrowJacketFollowsParallelPlates() {
        double gap = 0.001;
        Rig rig = rig(given(0.5), new Cooling.Jacket(List.of("middle", "top"), gap, 0.003));
        double length = 0.28 - 0.12;
        double width = Math.PI * (0.16 + gap);
        double flow = 0.5 * LITRE_PER_MINUTE;
        double speed = flow / (width * gap);
        double friction = 12 * VISCOSITY * length * flow / (width * Math.pow(gap, 3));
        OperatingPoint point = point(rig);
        assertThat(point.circuitDropPa())
                .isCloseTo(friction + 1.5 * DENSITY * speed * speed / 2, withinPercentage(0.01));
        assertThat(point.elements().get(0).reynolds().orElseThrow())
                .isCloseTo(2 * gap * speed * DENSITY / VISCOSITY, within(1e-9));
    }

    /** Borda and Carnot into the jacket, the sharp edge out of it, both on the hose's speed and told of the jacket. */
    @Test
    void aJacketPaysForItsInletAndOutlet() {
        double bore = 0.006;
        Cooling.Element jacket = new Cooling.Jacket(List.of("lower"), 0.01, 0.003);
        List<ElementFlow> alone = point(rig(given(3), hose(bore, 1, ""))).elements();
        List<ElementFlow> both = point(rig(given(3), hose(bore, 1, ""), jacket, hose(bore, 1, "")))
                .elements();
        double speed = 3 * LITRE_PER_MINUTE / (Math.PI / 4 * bore * bore);
        double head = DENSITY * speed * speed / 2;
        double ratio = Math.PI / 4 * bore * bore / (Math.PI * 0.17 * 0.01);
        double joints = head * ((1 - ratio) * (1 - ratio) + 0.5 * (1 - ratio));
        // friction of the wide gap is a few hundredths of a pascal
        assertThat(both.get(1).pressureDropPa()).isCloseTo(joints, within(0.5));
        assertThat(both.get(1).pressureDropPa()).isGreaterThan(joints);
        assertThat(both.get(0).pressureDropPa() + head).isCloseTo(alone.get(0).pressureDropPa(), within(1e-6));
    }

    @Test
    void twoEqualBranchesHalveTheFlow() {
        Rig rig = rig(given(4), hose(0.008, 1, ""), hose(0.005, 2, "left"), hose(0.005, 2, "right"));
        List<ElementFlow> flows = point(rig).elements();
        assertThat(flows.get(1).massFlowKgPerS()).isCloseTo(flows.get(0).massFlowKgPerS() / 2, withinPercentage(1e-10));
        assertThat(flows.get(2).massFlowKgPerS()).isCloseTo(flows.get(0).massFlowKgPerS() / 2, withinPercentage(1e-10));
    }

    /** Squares side by side: the flows are as the ratings, and so does the pressure of one with the sum of both. */
    @Test
    void valvesSideBySideAddTheirRatings() {
        OperatingPoint point = point(rig(given(6), valve(4, "a"), valve(8, "b")));
        assertThat(point.elements().get(0).massFlowKgPerS())
                .isCloseTo(point.massFlowKgPerS() / 3, withinPercentage(1e-9));
        assertThat(point.circuitDropPa()).isCloseTo(1e5 * DENSITY / 1000 * 0.25, withinPercentage(1e-9));
        assertThat(point.elements().get(0).reynolds()).isEmpty();
    }

    /** H0 - s Q = k Q^2 solved by hand. */
    @Test
    void aValveMeetsAStraightPumpLine() {
        double lift = 1.5;
        double[] drop = {1e5 / (1000 * GRAVITY) / (5.0 * 5)};
        double slope = 10.0 / 8;
        double free = 10 - lift;
        double byHand = (-slope + Math.sqrt(slope * slope + 4 * drop[0] * free)) / (2 * drop[0]);
        OperatingPoint point = point(rig(tank(0, 10, 8, 0), valve(5, ""), rise(lift, "")));
        assertThat(litres(point)).isCloseTo(byHand, withinPercentage(1e-9));
        assertThat(point.supplyHeadPa().orElseThrow())
                .isCloseTo(DENSITY * GRAVITY * (10 - slope * byHand), withinPercentage(1e-9));
        assertThat(point.elements().get(1).pressureDropPa()).isCloseTo(DENSITY * GRAVITY * lift, within(1e-6));
    }

    @Test
    void aTapsLineAndTheCircuitShareItsPressure() {
        double pressure = 3e5;
        OperatingPoint point = point(rig(tap(pressure, 10), valve(5, "")));
        double byHand = Math.sqrt(3 / (DENSITY / 1000) / (1 / 25.0 + 1 / 100.0));
        assertThat(litres(point)).isCloseTo(byHand, withinPercentage(1e-9));
        assertThat(point.circuitDropPa()).isCloseTo(pressure * 0.8, withinPercentage(1e-9));
    }

    @Test
    void inAClosedCircuitTheRisesCancel() {
        double flat = litres(point(rig(tank(0, 2, 8, 0), hose(0.006, 3, ""))));
        Rig high = rig(tank(0, 2, 8, 0), rise(5, ""), hose(0.006, 3, ""), rise(-5, ""));
        assertThat(litres(point(high))).isCloseTo(flat, withinPercentage(1e-9));
    }

    @Test
    void whatCannotBeLiftedIsRefusedWithBothHeads() {
        assertThatThrownBy(() -> point(rig(tank(0, 2, 8, 0), hose(0.006, 3, ""), rise(2.5, ""))))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("2.00 m")
                .hasMessageContaining("2.50 m");
        assertThatThrownBy(() -> point(rig(tap(0.1e5, 8), valve(6, ""), rise(1.1, ""))))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("1.02 m");
    }

    @Test
    void aBranchThatIsTooHighCarriesNothingAndIsNamed() {
        Rig rig = rig(given(2), valve(10, "low"), valve(10, "high"), rise(3, "high"));
        CircuitSolver.Result result = CircuitSolver.solve(rig);
        List<ElementFlow> flows = result.point().elements();
        assertThat(flows.get(0).massFlowKgPerS()).isCloseTo(result.point().massFlowKgPerS(), withinPercentage(1e-9));
        assertThat(flows.get(1).massFlowKgPerS()).isZero();
        assertThat(flows.get(1).pressureDropPa()).isZero();
        assertThat(flows.get(2).pressureDropPa()).isCloseTo(DENSITY * GRAVITY * 3, within(1e-6));
        assertThat(result.notes()).extracting(Message::key).containsExactly(MessageKey.WATER_BRANCH_IDLE);
        assertThat(result.notes().get(0).text())
                .contains("high")
                .contains("3.00 m")
                .contains("0.408 m");
        // 6 L/min would take 0.36 bar in the low one alone, enough for 3 m
        CircuitSolver.Result more =
                CircuitSolver.solve(rig(given(6), valve(10, "low"), valve(10, "high"), rise(3, "high")));
        assertThat(more.point().elements().get(1).massFlowKgPerS()).isPositive();
        assertThat(more.notes()).isEmpty();
    }

    @Test
    void standingWaterStandsEvenUnderARise() {
        OperatingPoint point = point(rig(given(0), hose(0.006, 3, ""), rise(2, ""), valve(3, "a"), valve(3, "b")));
        assertThat(point.massFlowKgPerS()).isZero();
        assertThat(point.volumeFlowM3PerS()).isZero();
        assertThat(point.circuitDropPa()).isCloseTo(DENSITY * GRAVITY * 2, within(1e-6));
        assertThat(point.elements()).hasSize(4);
        assertThat(point.elements().get(0)).isEqualTo(new ElementFlow(0, OptionalDouble.of(0), 0));
    }

    @Test
    void aFanMovesNoWater() {
        Rig rig = rig(new Supply.FinsAndFan(WATER_K, 3, 0.005, 0.03, 0.0005, Material.ALUMINIUM));
        assertThat(point(rig).massFlowKgPerS()).isZero();
        assertThat(point(rig).elements()).isEmpty();
        assertThat(CircuitSolver.curves(rig, 20).flowM3PerS()).isEmpty();
    }

    @Test
    void aBranchOfNothingIsRefused() {
        assertThatThrownBy(() -> point(rig(given(2), valve(10, "a"), rise(1, "gap"))))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("gap");
    }

    @Test
    void aPumpBeyondItsCurveIsSaid() {
        CircuitSolver.Result result = CircuitSolver.solve(rig(tank(0, 5, 4, 3), valve(100, "")));
        assertThat(result.notes()).extracting(Message::key).containsExactly(MessageKey.WATER_BEYOND_PUMP_CURVE);
        assertThat(litres(result.point())).isGreaterThan(4).isLessThan(10);
        assertThat(CircuitSolver.solve(rig(tank(0, 5, 4, 3), valve(1, ""))).notes())
                .isEmpty();
    }

    /** Water that ends lower than it began flows by itself, through a pump that gives nothing at all. */
    @Test
    void aSiphonRunsWithoutHelp() {
        assertThat(litres(point(rig(tap(0, 10), valve(5, ""), rise(-1, ""))))).isPositive();
    }

    @Test
    void theCurvesCrossAtTheOperatingPoint() {
        Rig rig = rig(tank(0, 10, 4, 7, 8, 0), hose(0.006, 2, ""), valve(5, ""));
        CurvePair curves = CircuitSolver.curves(rig, 41);
        double flow = point(rig).volumeFlowM3PerS();
        assertThat(curves.flowM3PerS()).hasSize(41).isSorted();
        assertThat(curves.flowM3PerS()[0]).isZero();
        assertThat(curves.flowM3PerS()[40]).isCloseTo(8 * LITRE_PER_MINUTE, withinPercentage(1e-6));
        for (int i = 0; i < 41; i++) {
            boolean before = curves.flowM3PerS()[i] < flow;
            assertThat(curves.supplyHeadPa()[i] > curves.circuitDropPa()[i]).isEqualTo(before);
        }
    }

    @Test
    void theCurvesOfACircuitThatIsTooHighCanBeDrawn() {
        CurvePair curves = CircuitSolver.curves(rig(tank(0, 2, 8, 0), hose(0.006, 3, ""), rise(2.5, "")), 9);
        assertThat(curves.circuitDropPa()[0]).isGreaterThan(curves.supplyHeadPa()[0]);
        CurvePair measured = CircuitSolver.curves(rig(given(2), hose(0.006, 3, "")), 3);
        assertThat(measured.flowM3PerS()[1]).isCloseTo(2 * LITRE_PER_MINUTE, withinPercentage(1e-9));
        assertThat(measured.supplyHeadPa()).containsOnly(Double.NaN);
    }
}
