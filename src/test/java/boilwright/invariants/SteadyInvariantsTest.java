package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.RigChange;
import boilwright.thermal.SteadyState;
import boilwright.thermal.ThermalProbe;
import boilwright.water.CircuitSolver;
import java.util.List;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;

/** What holds for the steady state of any pump that somebody could build. */
class SteadyInvariantsTest {
    static final double CLOSURE = 1e-4;
    private static final double SAME_K = 1e-4;

    @Property(tries = 40, seed = "3101", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void energyClosesAndNothingIsNotANumber(@ForAll Rig rig) {
        assertSound(rig);
    }

    @Tag("deep")
    @Property(tries = 3000, seed = "3102", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void energyClosesInManyMore(@ForAll Rig rig) {
        assertSound(rig);
    }

    private static void assertSound(Rig rig) {
        SteadyState steady = ThermalProbe.steady(RandomRigs.constant(rig));
        assertThat(steady.closureRelative()).isLessThan(CLOSURE);
        double out = steady.heatToWaterW() + steady.heatToAirW() + steady.heatToForelineW();
        assertThat(steady.heatDeliveredW())
                .isCloseTo(out, within(CLOSURE * Math.max(1, Math.abs(steady.heatDeliveredW()) + Math.abs(out))));
        assertThat(steady.toString()).doesNotContain("NaN").doesNotContain("Infinity");
        // the sum of what jets and column take is what leaves the boiler
        double jets = steady.stages().stream().mapToDouble(s -> s.flowKgPerS()).sum();
        assertThat(jets).isLessThanOrEqualTo(steady.vapourFlowKgPerS() * (1 + 1e-9));
    }

    @Property(tries = 20, seed = "3103", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void morePowerNeverLowersBoilerPressure(@ForAll Rig rig) {
        assertPowerMonotone(rig);
    }

    @Tag("deep")
    @Property(tries = 1000, seed = "3104", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void morePowerNeverLowersItInManyMore(@ForAll Rig rig) {
        assertPowerMonotone(rig);
    }

    private static void assertPowerMonotone(Rig rig) {
        SteadyState before = null;
        for (double fraction : new double[] {0.4, 0.6, 0.8, 1}) {
            SteadyState now = ThermalProbe.steady(RigChange.power(rig, fraction));
            if (before != null) {
                assertThat(now.heatDeliveredW()).isGreaterThanOrEqualTo(before.heatDeliveredW() * (1 - 1e-6) - 1e-6);
                assertThat(now.boilerPressurePa()).isGreaterThanOrEqualTo(before.boilerPressurePa() * (1 - 1e-6));
                assertThat(now.liquidTemperatureK()).isGreaterThanOrEqualTo(before.liquidTemperatureK() - 1e-6);
            }
            before = now;
        }
    }

    @Property(tries = 20, seed = "3105", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void moreWaterNeverWarmsAWall(@ForAll Rig rig) {
        assertWaterMonotone(rig);
    }

    @Tag("deep")
    @Property(tries = 1000, seed = "3106", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void moreWaterNeverWarmsAWallInManyMore(@ForAll Rig rig) {
        assertWaterMonotone(rig);
    }

    /** Water that comes no warmer than the room, so that it cools whatever it meets. */
    private static void assertWaterMonotone(Rig random) {
        Cooling given = random.cooling();
        Rig rig = RigChange.cooling(
                random,
                new Cooling(
                        Math.min(given.inletTemperatureK(), random.room().temperatureK()),
                        RigChange.given(random).flowM3PerS(),
                        given.elements(),
                        RigChange.given(random).capacityW()));
        double[] before = null;
        double flow = CircuitSolver.operatingPoint(rig).volumeFlowM3PerS();
        for (double factor : new double[] {1, 1.5, 2.5, 5}) {
            double[] now = ThermalProbe.steadyRest(RigChange.waterFlow(RandomRigs.constant(rig), factor * flow))
                    .wallsK();
            for (int w = 0; before != null && w < rig.stages().size(); w++) {
                assertThat(now[w])
                        .as("wall zone " + w + " at " + factor + " times the flow")
                        .isLessThanOrEqualTo(before[w] + 1e-6);
            }
            before = now;
        }
    }

    @Property(tries = 3, seed = "3108", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void bothWaysToRestAgree(@ForAll Rig rig) {
        assertBothWays(rig);
    }

    @Tag("deep")
    @Property(tries = 300, seed = "3109", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void bothWaysToRestAgreeInManyMore(@ForAll Rig rig) {
        assertBothWays(rig);
    }

    /** All at once and one part inside the other: no step of one is a step of the other. */
    private static void assertBothWays(Rig random) {
        Rig rig = RandomRigs.constant(random);
        ThermalProbe.Rest once = ThermalProbe.steadyRest(rig);
        ThermalProbe.Rest nested = ThermalProbe.nestedRest(rig);
        assertThat(once.oilK()).as("oil").isCloseTo(nested.oilK(), within(SAME_K));
        assertThat(once.boilerWallK()).as("boiler wall").isCloseTo(nested.boilerWallK(), within(SAME_K));
        for (int w = 0; w < once.wallsK().length; w++) {
            assertThat(once.wallsK()[w]).as("wall " + w).isCloseTo(nested.wallsK()[w], within(SAME_K));
        }
        for (int j = 0; j < once.columnK().length; j++) {
            assertThat(once.columnK()[j]).as("cell " + j).isCloseTo(nested.columnK()[j], within(SAME_K));
        }
    }

    @Property(tries = 20, seed = "3107", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void withoutHeatEverythingLiesBetweenRoomAndWater(@ForAll Rig rig) {
        Rig off = RigChange.schedule(rig, new Schedule(List.of(new Schedule.Power(0, 0))));
        ThermalProbe.Rest rest = ThermalProbe.steadyRest(off);
        double room = rig.room().temperatureK();
        double low = Math.min(room, rig.cooling().inletTemperatureK()) - 1e-6;
        double high = Math.max(room, rig.cooling().inletTemperatureK()) + 1e-6;
        assertThat(rest.oilK()).as("oil").isBetween(low, high);
        assertThat(rest.boilerWallK()).as("boiler wall").isBetween(low, high);
        for (double wall : rest.wallsK()) {
            assertThat(wall).as("body wall").isBetween(low, high);
        }
        if (rig.cooling().elements().isEmpty() || rig.cooling().inletTemperatureK() == room) {
            assertThat(rest.oilK()).isCloseTo(room, within(1e-6));
        }
    }
}
