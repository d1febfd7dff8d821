package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.RigChange;
import boilwright.thermal.RunResult;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every pump fluid that comes with the program gives an answer, in glass and in metal: silicones, ether, esters, mercury. */
class EveryFluidTest {
    static Stream<String> fluids() {
        List<String> fluids = FluidLibrary.builtIn().workingFluids();
        assertThat(fluids)
                .contains("mercury", "di-2-ethylhexyl-phthalate", "di-n-butyl-phthalate", "five-ring-polyphenyl-ether");
        return fluids.stream();
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void answersInGlass(String fluid) {
        assertAnswers(RigChange.fluid(TestRigs.fourStageGlass(TestRigs.flame(1600)), fluid));
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void answersInMetal(String fluid) {
        assertAnswers(RigChange.fluid(TestRigs.metal150(1000), fluid));
    }

    private static void assertAnswers(Rig rig) {
        SteadyState steady = ThermalProbe.steady(rig);
        assertThat(steady.closureRelative()).isLessThan(1e-4);
        assertThat(steady.vapourFlowKgPerS()).isPositive();
        assertThat(steady.boilerPressurePa())
                .isBetween(
                        boilwright.vacuum.BackingSide.of(rig).restingPa(),
                        ThermalProbe.fluid(rig.fluidId()).vapourPressure(steady.liquidTemperatureK()));
        RunResult warm = ThermalProbe.warmup(rig);
        assertThat(warm.balance().closureRelative()).isLessThan(1e-3);
        assertThat(ThermalProbe.time(warm, EventKind.FIRST_VAPOUR, "")).isPresent();
        assertThat(ThermalProbe.cooldown(rig).balance().closureRelative()).isLessThan(1e-3);
    }
}
