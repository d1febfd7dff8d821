package boilwright.thermal;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.DrillRun.LimitTime;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** The water stops, and other faults. */
class FaultDrillTest {
    private static final Rig METAL = TestRigs.metal150(2200);

    private static FaultDrill drill(Rig rig, OptionalDouble at) {
        return new FaultDrill(
                rig,
                ThermalProbe.fluid(rig.fluidId()),
                ParameterValues.of(rig),
                Fault.WATER,
                at,
                new CancelToken(),
                ProgressSink.NONE);
    }

    private static LimitTime limit(DrillRun run, DrillLimit limit) {
        return run.limits().stream().filter(l -> l.limit() == limit).findFirst().orElseThrow();
    }

    @Test
    void theSoonerTheHeatIsCutTheLaterEveryLimitIsPassed() {
        for (Rig rig : new Rig[] {METAL, TestRigs.fourStageGlass(TestRigs.flame(2400))}) {
            FaultDrill drill = drill(rig, OptionalDouble.empty());
            DrillRun on = drill.run(OptionalDouble.empty());
            DrillRun late = drill.run(OptionalDouble.of(120));
            DrillRun now = drill.run(OptionalDouble.of(0));
            for (int i = 0; i < on.limits().size(); i++) {
                String what = rig.name() + " " + on.limits().get(i).limit();
                assertThat(on.limits().get(i).orNever())
                        .as(what)
                        .isLessThanOrEqualTo(late.limits().get(i).orNever() + 0.1);
                assertThat(late.limits().get(i).orNever())
                        .as(what)
                        .isLessThanOrEqualTo(now.limits().get(i).orNever() + 0.1);
            }
        }
    }

    /** By hand: what stands in the jacket warms to 100 C and boils away before its wall can get hotter than that. */
    @Test
    void aJacketHoldsTheJetsUntilItsWaterHasBoiledAway() {
        Rig rig = TestRigs.fourStageGlass(TestRigs.flame(2400));
        double heatW = ThermalProbe.steady(rig).heatToWaterW();
        double inner = rig.body().innerDiameterM() + 2 * rig.body().wallThicknessM();
        double height = 0.30 - rig.body().uncooledLowerHeightM();
        double waterKg = 998 * Math.PI * (inner + 0.005) * 0.005 * height;
        double boilsS = waterKg * 4186 * 80 / heatW;
        double drySeconds = boilsS + waterKg * 2257e3 / heatW;
        DrillRun on = drill(rig, OptionalDouble.empty()).run(OptionalDouble.empty());
        assertThat(limit(on, DrillLimit.WATER_BOILS).orNever())
                .as("the hottest zone boils before the mean")
                .isBetween(0.5 * boilsS, 1.5 * boilsS);
        assertThat(on.firstJetLostS().orElseThrow()).isBetween(0.8 * drySeconds, 1.6 * drySeconds);
    }

    @Test
    void warmWallsEndTheJetsAndNoneCondensesOnAWallHotterThanItsVapour() {
        DrillRun on = drill(METAL, OptionalDouble.empty()).run(OptionalDouble.empty());
        double film = limit(on, DrillLimit.FILM).orNever();
        assertThat(film).isLessThan(FaultDrill.WATCHED_S);
        assertThat(on.firstJetLostS().orElseThrow()).isBetween(film - 60, film + 120);
        assertThat(limit(on, DrillLimit.WATER_BOILS).orNever()).isLessThan(film);
        TimeSeries series = on.run().series();
        double[] oil = series.column(SeriesQuantity.LIQUID_TEMPERATURE).values();
        for (int k = 1; k <= METAL.stages().size(); k++) {
            double[] wall = series.column(SeriesQuantity.STAGE_WALL, k).values();
            double[] share =
                    series.column(SeriesQuantity.STAGE_CONDENSED_SHARE, k).values();
            for (int i = 0; i < oil.length; i++) {
                if (wall[i] >= oil[i]) {
                    assertThat(share[i]).isZero();
                }
            }
        }
    }

    @Test
    void cutAtOnceTheJetsGoOutForWantOfVapourAndTheWallsKeepCondensing() {
        DrillRun now = drill(METAL, OptionalDouble.empty()).run(OptionalDouble.of(0));
        assertThat(limit(now, DrillLimit.FILM).passedS()).isEmpty();
        assertThat(now.jetsGoneS()).isPresent();
    }

    @Test
    void theWaterCanStopInTheMiddleOfTheWarmUp() {
        DrillRun early = drill(METAL, OptionalDouble.of(300)).run(OptionalDouble.empty());
        DrillRun rest = drill(METAL, OptionalDouble.empty()).run(OptionalDouble.empty());
        assertThat(limit(early, DrillLimit.WATER_BOILS).orNever())
                .as("a cold pump holds out longer")
                .isGreaterThan(limit(rest, DrillLimit.WATER_BOILS).orNever());
        assertThat(early.run().events().get(0).kind()).isEqualTo(EventKind.WATER_STOPS);
    }
}
