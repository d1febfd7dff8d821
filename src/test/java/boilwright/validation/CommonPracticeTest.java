package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What people who run such pumps know. Source of all five: common practice, no source. */
@Tag("validation")
class CommonPracticeTest {
    /**
     * A small four-stage glass pump labelled 0.8 kW needs two to three times that from an open gas burner: with 0.022 m2 of
     * heated area 0.8 kW of fuel never brings all jets to full flow. Common practice, no source.
     */
    @Test
    void asMuchGasAsTheLabelSaysIsTooLittle() {
        Rig rig = TestRigs.fourStageGlass(TestRigs.flame(800));
        assertThat(ThermalProbe.steady(rig).stages()).anyMatch(stage -> !stage.full());
        assertThat(ThermalProbe.time(ThermalProbe.warmup(rig), EventKind.FULL_PUMPING, ""))
                .isEmpty();
    }

    /** The other half of it: 1.6 to 2.4 kW do. Common practice, no source. */
    @ParameterizedTest
    @ValueSource(doubles = {1600, 2000, 2400})
    void twoToThreeTimesTheLabelIsEnough(double fuelW) {
        Rig rig = TestRigs.fourStageGlass(TestRigs.flame(fuelW));
        assertThat(ThermalProbe.steady(rig).stages()).allMatch(StageState::full);
        assertThat(ThermalProbe.time(ThermalProbe.warmup(rig), EventKind.FULL_PUMPING, ""))
                .isPresent();
    }

    /** A 1.5 kW hot plate in poor contact (60 W/m2K) does not make the same pump work. Common practice, no source. */
    @Test
    void aHotPlateInPoorContactDoesNotDo() {
        Rig rig = TestRigs.fourStageGlass(TestRigs.poorPlate());
        SteadyState steady = ThermalProbe.steady(rig);
        assertThat(steady.stages()).noneMatch(StageState::full);
        assertThat(steady.speedM3PerS()).isZero();
        assertThat(ThermalProbe.time(ThermalProbe.warmup(rig), EventKind.FULL_PUMPING, ""))
                .isEmpty();
    }

    /**
     * On silicone or ether charges in glass the jets light from the bottom up, the top one 10 s to 3 minutes after the one
     * below. Common practice, no source. The ether boils so hot that the bare column takes much of the vapour: this pump
     * carries it from about 3.3 kW of fuel; with less its top jet never holds, and that is no pump whose lighting anybody
     * has watched.
     */
    @ParameterizedTest
    @CsvSource({
        "704-type, 1600",
        "704-type, 2400",
        "705-type, 2000",
        "705-type, 2400",
        "five-ring-polyphenyl-ether, 4000"
    })
    void jetsLightFromTheBottomUp(String fluid, double fuelW) {
        Rig rig = RigChange.fluid(TestRigs.fourStageGlass(TestRigs.flame(fuelW)), fluid);
        assertBottomUp(rig);
    }

    /** The same on the two-stage glass pump of the teaching laboratory. Common practice, no source. */
    @Test
    void jetsLightFromTheBottomUpInTheTeachingLaboratory() {
        assertBottomUp(DemoRig.named("teaching-lab"));
    }

    private static void assertBottomUp(Rig rig) {
        assertThat(ThermalProbe.steady(rig).stages()).allMatch(StageState::full);
        RunResult run = ThermalProbe.warmup(rig);
        double before = 0;
        double gap = 0;
        for (var stage : rig.stages()) {
            OptionalDouble lit = ThermalProbe.time(run, EventKind.JET_LIT, stage.name());
            assertThat(lit).as(stage.name()).isPresent();
            gap = lit.getAsDouble() - before;
            assertThat(gap).as(stage.name()).isPositive();
            before = lit.getAsDouble();
        }
        assertThat(gap).as("top jet after the one below, s").isBetween(10.0, 180.0);
    }

    /**
     * Dissolved gas takes roughly five to ten minutes of backing pump before the heat comes on. Common practice, no source.
     */
    @Test
    void theOilGivesOffItsGasBeforeTheHeat() {
        Rig rig = RigChange.schedule(
                TestRigs.fourStageGlass(TestRigs.flame(1600)),
                new Schedule(List.of(new Schedule.Power(0, 0), new Schedule.Power(900, 1))));
        RunResult run = ThermalProbe.warmup(rig);
        assertThat(ThermalProbe.time(run, EventKind.DEGASSED, "").orElseThrow() / 60)
                .isBetween(5.0, 10.0);
        assertThat(ThermalProbe.time(run, EventKind.HEAT_ON, "").orElseThrow()).isEqualTo(900);
    }

    /** A 150 mm metal pump at 2.2 kW is pumping fully after 8 to 25 minutes. Common practice, no source. */
    @Test
    void aMetalPumpIsReadyInItsTime() {
        RunResult run = ThermalProbe.warmup(TestRigs.metal150(2200));
        assertThat(ThermalProbe.time(run, EventKind.FULL_PUMPING, "").orElseThrow() / 60)
                .isBetween(8.0, 25.0);
        RunResult demo = ThermalProbe.warmup(DemoRig.named("mirror-club"));
        double heat = ThermalProbe.time(demo, EventKind.HEAT_ON, "").orElseThrow();
        assertThat((ThermalProbe.time(demo, EventKind.FULL_PUMPING, "").orElseThrow() - heat) / 60)
                .isBetween(8.0, 25.0);
    }
}
