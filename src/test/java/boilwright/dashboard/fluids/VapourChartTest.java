package boilwright.dashboard.fluids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.chart.Band;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Series;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the chart of vapour pressures holds. */
class VapourChartTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    @Test
    void everyFluidHasItsCurveAndTheChosenOneComesFirst() {
        ChartData chart = chart("mercury", 133);
        assertThat(chart.series()).hasSize(7);
        assertThat(chart.series().get(0).title()).isEqualTo("mercury");
        assertThat(chart.y().logarithmic()).isTrue();
        for (Series series : chart.series()) {
            FluidRecord fluid = LIBRARY.find(series.title());
            assertThat(series.x()[0]).isEqualTo(273.15);
            assertThat(series.x()[series.x().length - 1]).isEqualTo(623.15);
            for (int i = 0; i < series.x().length; i++) {
                assertThat(series.y()[i]).isEqualTo(fluid.vapourPressure(series.x()[i]));
            }
        }
    }

    @Test
    void boilersRoomUncertaintyAndWhatThisPumpNeedsAreMarked() {
        ChartData chart = chart("704-type", 133);
        assertThat(chart.marks()).hasSize(1);
        assertThat(chart.marks().get(0).x()).isEqualTo(295.15);
        assertThat(chart.marks().get(0).title()).isEqualTo("room, 22.0 degC");
        Band boilers = chart.bands().get(0);
        // 1 Torr is 101325/760 Pa; NIST SP 811, appendix B.
        assertThat(boilers.low()[0]).isCloseTo(66.661, within(1e-3));
        assertThat(boilers.high()[1]).isCloseTo(399.967, within(1e-3));
        Band uncertainty = chart.bands().get(1);
        double p = chart.series().get(0).y()[70];
        assertThat(uncertainty.low()[70]).isCloseTo(p / 1.5, within(1e-12 * p));
        assertThat(uncertainty.high()[70]).isCloseTo(p * 1.5, within(1e-12 * p));
        assertThat(chart.spots()).hasSize(1);
        assertThat(LIBRARY.find("704-type").vapourPressure(chart.spots().get(0).x()))
                .isCloseTo(133, within(1e-6));
    }

    @Test
    void aFluidThatNeverBoilsThereHasNoSpot() {
        assertThat(chart("704-type", 1e9).spots()).isEmpty();
    }

    private static ChartData chart(String id, double boilerPa) {
        List<VapourCurve> curves = LIBRARY.workingFluids().stream()
                .map(one -> VapourCurve.of(LIBRARY.find(one), LIBRARY.lines(one)))
                .toList();
        return VapourChart.of(curves, FluidRow.of(LIBRARY, id, boilerPa), boilerPa, 295.15);
    }
}
