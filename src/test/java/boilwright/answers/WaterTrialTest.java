package boilwright.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.CancelledException;
import boilwright.errors.InputRefusedException;
import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.file.RigReader;
import boilwright.thermal.Plumbing;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Trials of the water say what the whole check says, and move the right way. */
class WaterTrialTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final double LITRE_PER_MIN = 1e-3 / 60;

    static List<String> demos() {
        return RigReader.demoNames();
    }

    private static WaterTrial trial(Rig rig, double k, double litresPerMin) {
        return WaterTrial.of(Stored.asked(rig), k, OptionalDouble.of(litresPerMin * LITRE_PER_MIN), new CancelToken());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void aRigAsItIsAgreesWithItsCheck(String demo) {
        Rig rig = RigReader.readDemo(demo, FLUIDS.workingFluids(), Set.of());
        CheckAnswer check = Stored.check(rig);
        WaterTrial trial = WaterTrial.of(Stored.asked(rig), new CancelToken());
        assertThat(trial.waterOutK().orElseThrow())
                .isCloseTo(WaterAnswer.fullJets(check).waterOutK().orElseThrow(), within(1e-9));
        assertThat(trial.dutyW())
                .isCloseTo(WaterAnswer.fullJets(check).heatToWaterW() + WaterSizing.pumpHeatW(rig), within(1e-9));
        if (WaterAnswer.fullJets(check) == check.steady()) {
            assertThat(check.findings()).containsAll(trial.margins());
        }
        WaterTrial same = WaterTrial.of(
                Stored.asked(rig), rig.cooling().inletTemperatureK(), OptionalDouble.empty(), new CancelToken());
        assertThat(same).isEqualTo(trial);
    }

    @Test
    void moreWaterComesOutColderAndWarmerWaterNarrowsTheFilmMargin() {
        Rig rig = Plumbing.behind(TestRigs.metal150(2200), Plumbing.chiller(3000, Supply.Control.MODULATING, 1));
        WaterTrial little = trial(rig, 293.15, 1);
        WaterTrial much = trial(rig, 293.15, 4);
        assertThat(much.waterOutK().orElseThrow()).isLessThan(little.waterOutK().orElseThrow());
        assertThat(much.flowM3PerS()).isCloseTo(4 * LITRE_PER_MIN, within(1e-15));
        WaterTrial warm = trial(rig, 303.15, 4);
        assertThat(warm.filmMarginK().orElseThrow())
                .isLessThan(much.filmMarginK().orElseThrow());
        assertThat(warm.capacityW().orElseThrow())
                .as("2.5 % for each kelvin of warmer water, as the rig says")
                .isCloseTo(3000 * 1.25, within(1e-6));
        assertThat(much.dutyW()).as("the pump's 60 W stay").isGreaterThan(60);
        assertThat(much.worst()).isPresent();
    }

    @Test
    void beyondWhatIsKnownOfAChillerIsRefusedAndACancelledTrialStops() {
        Rig rig = Plumbing.behind(TestRigs.metal150(2200), Plumbing.chiller(3000, Supply.Control.MODULATING, 1));
        assertThatThrownBy(() -> trial(rig, 313.15, 2)).isInstanceOf(InputRefusedException.class);
        CancelToken cancelled = new CancelToken();
        cancelled.cancel();
        assertThatThrownBy(() -> WaterTrial.of(Stored.asked(rig), cancelled)).isInstanceOf(CancelledException.class);
    }
}
