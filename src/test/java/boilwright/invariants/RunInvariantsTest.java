package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.RigChange;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.SteadyState;
import boilwright.thermal.ThermalProbe;
import boilwright.thermal.TimeSeries;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;

/** What holds for the run of any pump that somebody could build. */
class RunInvariantsTest {
    private static final double CLOSURE = 1e-3;
    private static final double REST_K = 0.2;
    /** Oil loss at which the charge would change within a run, share per hour. */
    private static final double LEAKING = 1e-3;

    @Property(tries = 5, seed = "3201", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void energyClosesAndNothingIsNotANumber(@ForAll Rig rig) {
        assertSound(ThermalProbe.warmup(rig));
        assertSound(ThermalProbe.cooldown(rig));
    }

    @Tag("deep")
    @Property(tries = 300, seed = "3202", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void energyClosesInManyMore(@ForAll Rig rig) {
        assertSound(ThermalProbe.warmup(rig));
        assertSound(ThermalProbe.cooldown(rig));
    }

    private static void assertSound(RunResult run) {
        assertThat(run.balance().closureRelative()).isLessThan(CLOSURE);
        for (TimeSeries.Column column : run.series().columns()) {
            if (column.quantity() == SeriesQuantity.LEAST_FILM_MARGIN) {
                // infinite while no jet is full: there is nothing to judge
                assertThat(Arrays.stream(column.values()).noneMatch(Double::isNaN))
                        .isTrue();
                continue;
            }
            assertThat(Arrays.stream(column.values()).allMatch(Double::isFinite))
                    .as(column.key())
                    .isTrue();
        }
        double[] times = run.series().columns().get(0).values();
        for (int i = 1; i < times.length; i++) {
            assertThat(times[i]).isGreaterThanOrEqualTo(times[i - 1]);
        }
        assertThat(run.events()).allSatisfy(event -> assertThat(event.reason()).isNotBlank());
    }

    @Property(tries = 15, seed = "3203", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void aRunToRestEndsInTheSteadyState(@ForAll Rig rig) {
        assertRest(rig);
    }

    @Tag("deep")
    @Property(tries = 300, seed = "3204", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void runsToRestEndInTheSteadyStateInManyMore(@ForAll Rig rig) {
        assertRest(rig);
    }

    private static void assertRest(Rig random) {
        Assume.that(RandomRigs.isConstant(random));
        Rig rig = RandomRigs.constant(random);
        SteadyState steady = ThermalProbe.steady(rig);
        double charge = rig.chargeM3()
                * ThermalProbe.fluid(rig.fluidId()).liquidDensity(rig.room().temperatureK());
        Assume.that(steady.oilLossKgPerS() * 3600 < LEAKING * charge);
        ThermalProbe.Ended run = ThermalProbe.warmedUp(rig);
        ThermalProbe.Rest rest = ThermalProbe.steadyRest(rig);
        assertThat(run.rest().oilK()).isCloseTo(rest.oilK(), within(REST_K));
        assertThat(run.rest().boilerWallK()).isCloseTo(rest.boilerWallK(), within(REST_K));
        for (int w = 0; w < rest.wallsK().length; w++) {
            assertThat(run.rest().wallsK()[w]).as("wall " + w).isCloseTo(rest.wallsK()[w], within(REST_K));
        }
    }

    @Property(tries = 10, seed = "3205", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void withoutHeatAPumpStaysAtRoomTemperature(@ForAll Rig random) {
        // mercury boils off slowly at room temperature and cools
        Assume.that(!random.fluidId().equals("mercury"));
        double room = random.room().temperatureK();
        Rig dry = RigChange.cooling(
                random,
                new Cooling(
                        room,
                        RigChange.given(random).flowM3PerS(),
                        random.cooling().elements(),
                        RigChange.given(random).capacityW()));
        ThermalProbe.Ended run =
                ThermalProbe.warmedUp(RigChange.schedule(dry, new Schedule(List.of(new Schedule.Power(0, 0)))));
        assertThat(run.rest().oilK()).isCloseTo(room, within(1e-3));
        assertThat(run.rest().boilerWallK()).isCloseTo(room, within(1e-3));
    }
}
