package boilwright.dashboard.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The outlines are the rig's own measures. */
class PumpShapeTest {
    private static final double NEAR = 1e-12;

    static List<Rig> rigs() {
        FluidLibrary fluids = FluidLibrary.builtIn();
        return RigReader.demoNames().stream()
                .map(name -> RigReader.readDemo(name, fluids.workingFluids(), Set.of()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void everyMeasureThatTheRigTellsIsInIt(Rig rig) {
        PumpShape shape = PumpShape.of(rig);
        assertThat(2 * shape.bodyInnerM).isCloseTo(rig.body().innerDiameterM(), within(NEAR));
        assertThat(shape.bodyOuterM - shape.bodyInnerM).isCloseTo(rig.body().wallThicknessM(), within(NEAR));
        assertThat(2 * shape.boiler.radiusM()).isCloseTo(rig.boiler().innerDiameterM(), within(NEAR));
        assertThat(shape.boiler.wallM()).isCloseTo(rig.boiler().wallThicknessM(), within(NEAR));
        assertThat(shape.columnTopM).isCloseTo(rig.column().heightM(), within(NEAR));
        assertThat(shape.tubes.get(shape.tubes.size() - 1).topM()).isCloseTo(shape.columnTopM, within(NEAR));
        for (int k = 0; k < rig.stages().size(); k++) {
            JetShape jet = shape.jets.get(k);
            assertThat(jet.throatM()).isCloseTo(rig.stages().get(k).heightM(), within(NEAR));
            assertThat(jet.outerM() - jet.innerM())
                    .isCloseTo(rig.stages().get(k).throatGapM(), within(NEAR));
            assertThat(jet.outerM() + jet.innerM())
                    .isCloseTo(rig.stages().get(k).throatDiameterM(), within(NEAR));
        }
    }

    @ParameterizedTest
    @MethodSource("rigs")
    void theOilStandsAsHighAsItsVolumeFillsTheBoiler(Rig rig) {
        BoilerShape boiler = BoilerShape.of(rig);
        for (double share : new double[] {1, 0.6, 0.2, 0.02}) {
            double depth = boiler.oilDepthM(share * rig.chargeM3());
            assertThat(depth).isLessThan(boiler.heightM());
            assertThat(volumeM3(boiler, depth)).isCloseTo(share * rig.chargeM3(), within(2e-4 * rig.chargeM3()));
        }
    }

    /** Thin discs, one on another. */
    private static double volumeM3(BoilerShape boiler, double depthM) {
        int discs = 20_000;
        double sum = 0;
        for (int i = 0; i < discs; i++) {
            double r = boiler.radiusAtM(depthM * (i + 0.5) / discs);
            sum += Math.PI * r * r * depthM / discs;
        }
        return sum;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void everyZoneLiesOnTheOneBelow(int stages) {
        PumpShape shape = PumpShape.of(DrawnRigs.of(stages, true, true));
        assertThat(shape.zoneEdgesM).hasSize(stages + 1).isSorted();
        assertThat(shape.water).hasSize(stages);
        assertThat(shape.topM).isGreaterThan(shape.cap.bottomM());
        assertThat(shape.bottomM).isLessThan(0);
    }

    @Test
    void withoutCapOrWaterThereIsNone() {
        PumpShape shape = PumpShape.of(DrawnRigs.of(2, false, false));
        assertThat(shape.cap).isNull();
        assertThat(shape.water).isEmpty();
    }
}
