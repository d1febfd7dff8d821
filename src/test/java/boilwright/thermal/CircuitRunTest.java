package boilwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Cooling;
import boilwright.rig.Material;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The thermal network behind every kind of supply; energies are balanced by the run itself, which refuses to end otherwise. */
class CircuitRunTest {
    private static final Rig METAL = TestRigs.metal150(2200);

    private static RunResult warmup(Rig rig) {
        return RunSimulator.warmup(
                rig, ThermalProbe.fluid(rig.fluidId()), ParameterValues.of(rig), new CancelToken(), ProgressSink.NONE);
    }

    @Test
    void heatToWaterIsTheSumOfItsElements() {
        for (Rig rig : List.of(METAL, Plumbing.branched(METAL), Plumbing.behind(METAL, Plumbing.tap()))) {
            SteadyState steady = ThermalProbe.steady(rig);
            double sum =
                    steady.elements().stream().mapToDouble(ElementState::heatW).sum();
            assertThat(sum).isCloseTo(steady.heatToWaterW(), within(1e-3 * steady.heatToWaterW()));
            assertThat(steady.closureRelative()).isLessThan(1e-6);
        }
    }

    @Test
    void branchesMixToWhatLeavesThemTogether() {
        SteadyState steady = ThermalProbe.steady(Plumbing.branched(METAL));
        ElementState first = steady.elements().get(2);
        ElementState second = steady.elements().get(3);
        double mixed = (first.massFlowKgPerS() * first.outletK() + second.massFlowKgPerS() * second.outletK())
                / (first.massFlowKgPerS() + second.massFlowKgPerS());
        assertThat(steady.elements().get(4).inletK()).isCloseTo(mixed, within(1e-6));
        assertThat(first.massFlowKgPerS() + second.massFlowKgPerS())
                .isCloseTo(steady.flow().massFlowKgPerS(), within(1e-9));
        // the trap's load of 25 W and little else
        assertThat(steady.elements().get(5).heatW()).isBetween(22.0, 28.0);
    }

    @Test
    void aHoseInARoomWarmerThanItsWaterTakesHeatUp() {
        SteadyState steady = ThermalProbe.steady(Plumbing.behind(METAL, Plumbing.tap()));
        ElementState there = steady.elements().get(0);
        double byHand = 0.5 * 2 * (METAL.room().temperatureK() - there.outletK());
        assertThat(there.heatW()).isPositive().isCloseTo(byHand, within(1e-6));
    }

    @Test
    void aLargeChillerHoldsItsSetPoint() {
        Rig rig = Plumbing.behind(METAL, Plumbing.chiller(4000, Supply.Control.MODULATING, 1));
        double[] in = warmup(rig).series().column(SeriesQuantity.WATER_IN).values();
        assertThat(in[in.length - 1]).isCloseTo(293.15, within(0.5));
        assertThat(Arrays.stream(in).max().orElseThrow()).isLessThan(293.15 + 0.5);
        SteadyState steady = ThermalProbe.steady(rig);
        double[] chiller = warmup(rig).series().column(SeriesQuantity.CHILLER).values();
        assertThat(chiller[chiller.length - 1])
                .as("duty and pump heat")
                .isCloseTo(steady.heatToWaterW() + 60, within(0.01 * steady.heatToWaterW()));
    }

    @Test
    void aSmallChillerSettlesWhereItsCapacityMeetsTheDuty() {
        Supply.Chiller small = Plumbing.chiller(1300, Supply.Control.MODULATING, 1);
        RunResult run = warmup(Plumbing.behind(METAL, small));
        double[] in = run.series().column(SeriesQuantity.WATER_IN).values();
        double[] duty = run.series().column(SeriesQuantity.HEAT_TO_WATER).values();
        double end = in[in.length - 1];
        double capacity = 1300 + 0.025 * 1300 * (end - 293.15);
        assertThat(end).isGreaterThan(295);
        assertThat(capacity).isCloseTo(duty[duty.length - 1] + 60, within(0.01 * capacity));
    }

    @Test
    void anOnOffChillerCyclesWithinItsBand() {
        Rig rig = Plumbing.behind(METAL, Plumbing.chiller(4000, Supply.Control.ON_OFF, 2));
        RunResult run = warmup(rig);
        double[] in = run.series().column(SeriesQuantity.WATER_IN).values();
        double[] chiller = run.series().column(SeriesQuantity.CHILLER).values();
        assertThat(Arrays.stream(in).max().orElseThrow()).isLessThan(293.15 + 1 + 0.2);
        assertThat(Arrays.stream(in).min().orElseThrow()).isGreaterThan(293.15 - 1 - 0.2);
        int switches = 0;
        for (int i = 1; i < chiller.length; i++) {
            if ((chiller[i] > 0) != (chiller[i - 1] > 0)) {
                switches++;
            }
        }
        assertThat(switches).isGreaterThan(5);
    }

    @Test
    void iceHoldsATankNearFreezingUntilItIsGone() {
        Rig rig = Plumbing.behind(METAL, Plumbing.tank(273.15, 0.015, 3));
        RunResult run = warmup(rig);
        double[] ice = run.series().column(SeriesQuantity.ICE).values();
        double[] in = run.series().column(SeriesQuantity.WATER_IN).values();
        double last = 3;
        for (int i = 0; i < ice.length; i++) {
            assertThat(ice[i]).isLessThanOrEqualTo(last + 1e-6);
            last = ice[i];
            if (ice[i] > 0.2) {
                assertThat(in[i]).isBetween(273.15, 275.15);
            }
        }
        assertThat(last).isLessThan(0.05);
        assertThat(in[in.length - 1]).isGreaterThan(280);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 3, 6})
    void moreAirBetweenFinsCoolsTheBodyMore(double speed) {
        SteadyState still = ThermalProbe.steady(finned(0));
        SteadyState blown = ThermalProbe.steady(finned(speed));
        SteadyState more = ThermalProbe.steady(finned(speed * 1.5));
        assertThat(blown.stages().get(1).wallK())
                .isLessThan(still.stages().get(1).wallK());
        assertThat(more.stages().get(1).wallK())
                .isLessThan(blown.stages().get(1).wallK());
        assertThat(blown.heatToWaterW()).isZero();
        assertThat(blown.closureRelative()).isLessThan(1e-6);
    }

    private static Rig finned(double speed) {
        Rig small = TestRigs.metal150(600);
        return small.withCooling(
                new Cooling(new Supply.FinsAndFan(293.15, speed, 0.008, 0.03, 0.0008, Material.ALUMINIUM), List.of()));
    }

    @Test
    void aTapBehavesAsTheSameFlowMeasured() {
        Rig tap = METAL.withCooling(new Cooling(Plumbing.tap(), METAL.cooling().elements()));
        SteadyState one = ThermalProbe.steady(tap);
        SteadyState other = ThermalProbe.steady(METAL.withCooling(new Cooling(
                new Supply.GivenFlow(285.15, one.flow().volumeFlowM3PerS(), OptionalDouble.empty()),
                METAL.cooling().elements())));
        assertThat(one.heatToWaterW()).isCloseTo(other.heatToWaterW(), within(1e-6 * other.heatToWaterW()));
    }
}
