package boilwright.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.Water;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.file.RigReader;
import boilwright.thermal.Plumbing;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the water carries and needs. */
class WaterQuestionTest {
    private static final FluidLibrary FLUIDS = FluidLibrary.builtIn();
    private static final double SESSION_S = 7200;

    static List<String> demos() {
        return RigReader.demoNames();
    }

    private static WaterAnswer answer(Rig rig) {
        return Stored.answer(new WaterQuestion(Stored.asked(rig.withSession(SESSION_S))));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void itsEnergyIsThatOfTheCheck(String demo) {
        WaterAnswer answer = answer(RigReader.readDemo(demo, FLUIDS.workingFluids(), Set.of()));
        double check = WaterAnswer.fullJets(answer.check()).heatToWaterW();
        double sum = answer.elements().stream()
                .mapToDouble(WaterAnswer.Element::heatW)
                .sum();
        assertThat(sum).isCloseTo(check, within(1e-3 * check));
        assertThat(answer.restDutyW()).isEqualTo(check);
        assertThat(answer.verdict()).isNotBlank();
    }

    @Test
    void atTheLeastFlowTheLimitIsJustKept() {
        WaterAnswer answer = answer(TestRigs.metal150(2200));
        WaterAnswer.LeastFlow out = answer.leastFlows().stream()
                .filter(l -> l.limit() == MarginId.WATER_OUT)
                .findFirst()
                .orElseThrow();
        double flow = out.flowM3PerS().orElseThrow();
        SteadyState there = ThermalProbe.steady(boilwright.thermal.RigChange.waterFlow(TestRigs.metal150(2200), flow));
        assertThat(there.waterOutK().orElseThrow()).isCloseTo(325.15, within(0.01));
        assertThat(answer.governing().orElseThrow().limit()).isEqualTo(MarginId.WATER_OUT);
        assertThat(answer.pumpFlowM3PerS().orElseThrow()).isCloseTo(1.25 * flow, within(1e-12));
    }

    @Test
    void aChillerThatIsShortSaysByHowMuchAndEachCureIsEnough() {
        Rig rig = Plumbing.behind(TestRigs.metal150(2200), Plumbing.chiller(1300, Supply.Control.MODULATING, 1));
        WaterAnswer answer = answer(rig);
        assertThat(answer.verdict()).contains("short");
        assertThat(answer.anyFails()).isTrue();
        assertThat(answer.settlesAtK().orElseThrow()).isGreaterThan(293.15);
        assertThat(answer.cures()).isNotEmpty();
        double wanted = 1.2 * (answer.peakDutyW() + answer.pumpHeatW());
        assertThat(answer.chillerW().orElseThrow()).isCloseTo(wanted, within(1e-9 * wanted));
        WaterAnswer larger = answer(Plumbing.behind(
                TestRigs.metal150(2200), Plumbing.chiller(1.001 * wanted, Supply.Control.MODULATING, 1)));
        assertThat(larger.cures()).isEmpty();
        assertThat(larger.verdict()).contains("sufficient");
    }

    @Test
    void aTankLastsAsLongAsItsWaterAndIceTakeTheHeat() {
        WaterAnswer dry = answer(Plumbing.behind(TestRigs.metal150(2200), Plumbing.tank(288.15, 0.2, 0)));
        double byHand = 200 * 4186 * (dry.tank().orElseThrow().limitK() - 288.15) / (dry.restDutyW() + 60);
        assertThat(dry.tank().orElseThrow().runTimeS().orElseThrow())
                .as("plus the warm-up, in which little comes")
                .isBetween(byHand, byHand + 1200);
        WaterAnswer iced = answer(Plumbing.behind(TestRigs.metal150(2200), Plumbing.tank(273.15, 0.2, 40)));
        assertThat(iced.tank().orElseThrow().runTimeS().orElseThrow())
                .isGreaterThan(dry.tank().orElseThrow().runTimeS().orElseThrow());
    }

    @Test
    void iceForASessionTakesItsHeat() {
        assertThat(WaterSizing.iceKg(1e6, 0, 293.15, Water.FREEZING_K))
                .as("V8: heat of fusion alone, 333.6 kJ/kg")
                .isCloseTo(1e6 / 333.6e3, within(1e-9));
        assertThat(WaterSizing.iceKg(1e3, 0.1, 283.15, 300.15)).isZero();
    }

    @Test
    void theOtherOrderIsWorkedOutToo() {
        WaterAnswer answer = answer(TestRigs.metal150(2200));
        SteadyState turned = answer.turnedRound().orElseThrow();
        assertThat(turned.capK().orElseThrow())
                .as("a cap that is cooled last is warmer")
                .isGreaterThan(answer.steady().capK().orElseThrow());
        assertThat(turned.heatToWaterW())
                .isCloseTo(answer.steady().heatToWaterW(), within(0.02 * turned.heatToWaterW()));
    }
}
