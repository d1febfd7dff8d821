package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.thermal.EventKind;
import boilwright.thermal.RigChange;
import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whole pumps against what the trade and the handbooks say of pumps that work.
 *
 * <p>Sources: boiler pressure usually 0.5-2 Torr: M. H. Hablanian, "High-Vacuum Technology", chapter on vapour jet pumps;
 * J. F. O'Hanlon, "A User's Guide to Vacuum Technology" (both from memory). Boiler temperature about 250-270 C for oils in
 * general: D. Mueller, "Everything you need to know about oil diffusion pumps", 2020; silicone set point about 235 C, speed
 * does not rise with more heat once the jets are stable, warm-up of large pumps up to 45 minutes: M. Vitale, Industrial
 * Heating, September 2013, reprinted in Chemical Technology, April 2015. Cool-down without a quick-cool coil 30-60 minutes
 * and more: typical data sheets (from memory). Without water the body no longer condenses, vapour leaves through inlet and
 * foreline and the boiler overheats: Industrial Heating, article on operation and maintenance of oil diffusion pumps.
 *
 * <p>Not held: the 150 mm metal pump of the tests at 2.2 kW stands at 2.5 Torr and 248 C. Its throats (20 cm2) are those of
 * real pumps as remembered, yet the energy balance asks for about 40 cm2 at 1 Torr; the handbooks do not settle which is
 * wrong, and nothing was turned to bring it into the band. The demo of that size has 32 cm2.
 */
@Tag("validation")
class WorkingPumpTest {
    private static final double TORR = 133.322;

    static Stream<Rig> workingPumps() {
        return Stream.of(
                DemoRig.named("mirror-club"),
                DemoRig.named("teaching-lab"),
                TestRigs.fourStageGlass(TestRigs.flame(1600)),
                TestRigs.fourStageGlass(TestRigs.flame(2400)));
    }

    @ParameterizedTest
    @MethodSource("workingPumps")
    void boilerPressureAndTemperature(Rig rig) {
        SteadyState steady = ThermalProbe.steady(rig);
        assertThat(steady.stages()).allMatch(StageState::full);
        assertThat(steady.boilerPressurePa() / TORR).isBetween(0.5, 2.0);
        assertThat(steady.liquidTemperatureK() - 273.15).isCloseTo(235, within(15.0));
    }

    /** The hotter-boiling silicone needs a hotter boiler for the same pressure. */
    @Test
    void aHeavierSiliconeBoilsHotter() {
        Rig rig = DemoRig.named("mirror-club");
        double light = ThermalProbe.steady(rig).liquidTemperatureK();
        double heavy = ThermalProbe.steady(RigChange.fluid(rig, "705-type")).liquidTemperatureK();
        assertThat(heavy - light).isBetween(10.0, 40.0);
    }

    @Test
    void moreHeatAddsNoSpeedOnceTheJetsAreFull() {
        Rig rig = TestRigs.metal150(1000);
        double speed = ThermalProbe.steady(rig).speedM3PerS();
        double stronger = ThermalProbe.steady(TestRigs.metal150(1500)).speedM3PerS();
        assertThat(stronger).isCloseTo(speed, within(1e-12));
        assertThat(speed).isBetween(0.5, 2.4);
    }

    /** A large pump held at 170 C is back in 5-8 minutes; a small one must not take longer. */
    @Test
    void reheatFromStandby() {
        double leave = 4 * 3600;
        Rig rig = RigChange.schedule(
                DemoRig.named("mirror-club"),
                new Schedule(List.of(new Schedule.HoldOil(0, 443.15), new Schedule.Power(leave, 1))));
        RunResult run = ThermalProbe.warmup(rig);
        double reheat = ThermalProbe.time(run, EventKind.FULL_PUMPING, "").orElseThrow() - leave;
        assertThat(reheat).isBetween(60.0, 8 * 60.0);
    }

    /** A metal pump without a quick-cool coil. */
    @Test
    void coolDownTakesThatLong() {
        RunResult run = ThermalProbe.cooldown(DemoRig.named("mirror-club"));
        double off = ThermalProbe.time(run, EventKind.BACKING_MAY_STOP, "").orElseThrow();
        assertThat(off / 60).isBetween(30.0, 150.0);
        assertThat(ThermalProbe.time(run, EventKind.JETS_GONE, "").orElseThrow())
                .isBetween(30.0, off / 3);
    }

    /** Common practice and trade: without water a pump of this size no longer pumps, and its oil goes. */
    @Test
    void withoutWaterTheBodyStopsCondensing() {
        Rig rig = DemoRig.named("mirror-club");
        SteadyState dry = ThermalProbe.steady(RigChange.waterFlow(rig, 0));
        SteadyState cooled = ThermalProbe.steady(rig);
        assertThat(dry.stages()).noneMatch(StageState::lit);
        assertThat(dry.oilLossKgPerS()).isGreaterThan(1e3 * cooled.oilLossKgPerS());
        assertThat(dry.liquidTemperatureK()).isGreaterThan(cooled.liquidTemperatureK());
    }
}
