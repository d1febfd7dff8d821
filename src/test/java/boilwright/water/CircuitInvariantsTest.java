package boilwright.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.Water;
import boilwright.invariants.RandomRigs;
import boilwright.rig.Cooling;
import boilwright.rig.Cooling.Element;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.water.OperatingPoint.ElementFlow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** What holds for any circuit that somebody could plumb. */
class CircuitInvariantsTest {
    private static final double SAME = 1e-9;

    @Provide
    Arbitrary<Rig> rigs() {
        return RandomRigs.suppliedBy(SupplyKind.TAP, SupplyKind.TANK)
                .filter(rig -> flows(rig).isPresent());
    }

    /** A rig whose water passes one thing alone that loses pressure. */
    @Provide
    Arbitrary<Rig> ofOneElement() {
        return RandomRigs.suppliedBy(SupplyKind.TAP)
                .flatMap(rig -> Arbitraries.of(rig.cooling().elements().stream()
                                .filter(element -> !(element instanceof Cooling.Rise))
                                .toList())
                        .map(element ->
                                rig.withCooling(new Cooling(rig.cooling().supply(), List.of(element)))));
    }

    private static Optional<OperatingPoint> flows(Rig rig) {
        Network network = new Network(rig);
        return SupplyHead.of(rig.cooling().supply(), network.density()).pressurePa(0) > network.liftPa()
                ? Optional.of(CircuitSolver.operatingPoint(rig))
                : Optional.empty();
    }

    @Property(seed = "4101", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void everyElementTakesMoreFromMoreWater(@ForAll("ofOneElement") Rig rig) {
        double before = 0;
        for (double litres = 1e-3; litres < 40; litres *= 1.05) {
            Rig given = rig.withCooling(
                    new Cooling(Plumbing.given(litres), rig.cooling().elements()));
            double drop = CircuitSolver.operatingPoint(given).circuitDropPa();
            assertThat(drop).as("at %s L/min", litres).isGreaterThan(before);
            before = drop;
        }
    }

    @Property(seed = "4102", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void theOperatingPointLiesOnBothCurves(@ForAll("rigs") Rig rig) {
        OperatingPoint point = CircuitSolver.operatingPoint(rig);
        Network network = new Network(rig);
        SupplyHead head = SupplyHead.of(rig.cooling().supply(), network.density());
        double scale = Math.abs(head.pressurePa(0)) + Math.abs(network.liftPa());
        assertThat(point.massFlowKgPerS()).isPositive();
        assertThat(point.supplyHeadPa().orElseThrow())
                .isCloseTo(head.pressurePa(point.massFlowKgPerS()), within(SAME * scale));
        assertThat(point.circuitDropPa()).isCloseTo(point.supplyHeadPa().orElseThrow(), within(SAME * scale));
        assertThat(point.volumeFlowM3PerS()
                        * Water.density(rig.cooling().supply().temperatureK()))
                .isCloseTo(point.massFlowKgPerS(), within(SAME * point.massFlowKgPerS()));
    }

    /** Flows add up and drops agree, read from what is told of the elements alone. */
    @Property(seed = "4103", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void branchesAgree(@ForAll("rigs") Rig rig) {
        OperatingPoint point = CircuitSolver.operatingPoint(rig);
        double total = 0;
        for (Circuit.Stretch stretch : Circuit.of(rig.cooling().elements()).stretches()) {
            double flow = 0;
            double across = Double.NaN;
            for (List<Integer> branch : stretch.branches()) {
                ElementFlow first = point.elements().get(branch.get(0));
                flow += first.massFlowKgPerS();
                double drop = branch.stream()
                        .mapToDouble(i -> point.elements().get(i).pressureDropPa())
                        .sum();
                if (first.massFlowKgPerS() > 0) {
                    across = Double.isNaN(across) ? drop : across;
                    assertThat(drop).isCloseTo(across, within(SAME * Math.max(1, Math.abs(across))));
                }
            }
            assertThat(flow).isCloseTo(point.massFlowKgPerS(), within(SAME * flow));
            total += across;
            for (List<Integer> branch : stretch.branches()) {
                assertIdleOnlyWhenTooHigh(point, branch, across);
            }
        }
        assertThat(total).isCloseTo(point.circuitDropPa(), within(SAME * Math.max(1e3, Math.abs(total))));
    }

    private static void assertIdleOnlyWhenTooHigh(OperatingPoint point, List<Integer> branch, double across) {
        if (point.elements().get(branch.get(0)).massFlowKgPerS() == 0) {
            double lift = branch.stream()
                    .mapToDouble(i -> point.elements().get(i).pressureDropPa())
                    .sum();
            assertThat(lift).isGreaterThanOrEqualTo(across);
        }
    }

    @Property(seed = "4104", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void aStrongerSupplyNeverGivesLess(@ForAll("rigs") Rig rig) {
        OperatingPoint before = CircuitSolver.operatingPoint(rig);
        OperatingPoint after = CircuitSolver.operatingPoint(rig.withCooling(
                new Cooling(stronger(rig.cooling().supply()), rig.cooling().elements())));
        for (int i = 0; i < before.elements().size(); i++) {
            double flow = before.elements().get(i).massFlowKgPerS();
            assertThat(after.elements().get(i).massFlowKgPerS()).isGreaterThanOrEqualTo(flow * (1 - SAME));
        }
        assertThat(after.massFlowKgPerS()).isGreaterThan(before.massFlowKgPerS());
    }

    private static Supply stronger(Supply supply) {
        if (supply instanceof Supply.Tap tap) {
            return new Supply.Tap(tap.temperatureK(), tap.staticPressurePa() * 1.1, tap.lineFlowAtOneBarM3PerS());
        }
        Supply.Tank tank = (Supply.Tank) supply;
        List<Supply.CurvePoint> curve = tank.pump().curve().stream()
                .map(p -> new Supply.CurvePoint(p.flowM3PerS(), p.headM() * 1.1 + 0.1))
                .toList();
        return new Supply.Tank(tank.temperatureK(), tank.volumeM3(), 0, 0, new Supply.Pump(curve, 20));
    }

    @Property(seed = "4105", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void aClosedBranchNeverLowersTheOthers(@ForAll("rigs") Rig rig) {
        OperatingPoint before = CircuitSolver.operatingPoint(rig);
        List<Element> all = rig.cooling().elements();
        for (String closed : all.stream()
                .map(e -> e.place().branch())
                .filter(b -> !b.isEmpty())
                .distinct()
                .toList()) {
            List<Element> kept =
                    all.stream().filter(e -> !e.place().branch().equals(closed)).toList();
            Optional<OperatingPoint> after =
                    flows(rig.withCooling(new Cooling(rig.cooling().supply(), kept)));
            assertThat(flowByBranch(after, kept))
                    .allSatisfy((branch, flow) -> assertThat(flow)
                            .as(branch)
                            .isGreaterThanOrEqualTo(
                                    flowByBranch(Optional.of(before), all).get(branch) * (1 - SAME)));
        }
    }

    private static Map<String, Double> flowByBranch(Optional<OperatingPoint> point, List<Element> elements) {
        Map<String, Double> flows = new HashMap<>();
        for (int i = 0; i < elements.size(); i++) {
            String branch = elements.get(i).place().branch();
            if (!branch.isEmpty()) {
                int index = i;
                flows.put(
                        branch,
                        point.map(p -> p.elements().get(index).massFlowKgPerS()).orElse(0.0));
            }
        }
        return flows;
    }

    /** The same circuit gives the same bits, whatever was asked before. */
    @Property(seed = "4106", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    void theSameQuestionGivesTheSameBits(@ForAll("rigs") Rig rig, @ForAll("rigs") Rig other) {
        OperatingPoint first = CircuitSolver.operatingPoint(rig);
        CircuitSolver.operatingPoint(other);
        assertThat(CircuitSolver.operatingPoint(rig)).isEqualTo(first);
        List<Cooling.Element> copy = new ArrayList<>(rig.cooling().elements());
        assertThat(CircuitSolver.operatingPoint(
                        rig.withCooling(new Cooling(rig.cooling().supply(), copy))))
                .isEqualTo(first);
    }
}
