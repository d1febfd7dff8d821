package boilwright.dashboard.fluids;

import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.Band;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Mark;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.Spot;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.units.PhysicalConstants;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The chart of all vapour pressures: one fluid in front of the others, what boilers need, and how warm the room is. */
final class VapourChart {
    /** What boilers of vapour-jet pumps usually work at: 0.5 to 3 Torr; common practice, no source. */
    static final double BOILERS_LOW_PA = 0.5 * PhysicalConstants.TORR_PA;

    static final double BOILERS_HIGH_PA = 3.0 * PhysicalConstants.TORR_PA;

    /** Lower pressures can't be told from nothing. */
    private static final double LOWEST_PA = 1e-8;

    private VapourChart() {}

    /**
     * The chart.
     *
     * @param curves every fluid's
     * @param chosen the fluid in front: its curve comes first and is drawn as the plain heavy line
     * @param boilerPa boiler pressure that this pump needs, Pa
     * @param roomK temperature of the room, K
     */
    static ChartData of(Collection<VapourCurve> curves, FluidRow chosen, double boilerPa, double roomK) {
        List<Series> series = new ArrayList<>();
        List<Band> bands = new ArrayList<>();
        bands.add(new Band(
                WindowText.say("fluids.chart.boilers"),
                new double[] {VapourCurve.COLDEST_K, VapourCurve.HOTTEST_K},
                new double[] {BOILERS_LOW_PA, BOILERS_LOW_PA},
                new double[] {BOILERS_HIGH_PA, BOILERS_HIGH_PA}));
        for (VapourCurve curve : curves) {
            Series one = new Series(curve.id(), curve.temperaturesK(), curve.pressuresPa());
            if (curve.id().equals(chosen.id())) {
                series.add(0, one);
                bands.add(new Band(
                        WindowText.say("fluids.chart.uncertain"),
                        curve.temperaturesK(),
                        curve.lowPa(),
                        curve.highPa()));
            } else {
                series.add(one);
            }
        }
        List<Spot> spots = new ArrayList<>();
        chosen.boilsK().ifPresent(boilsK -> {
            String pressure = QuantityWriter.writeAuto(boilerPa, Dimension.PRESSURE);
            spots.add(new Spot(WindowText.say("fluids.chart.boils", pressure), boilsK, boilerPa));
        });
        String room = QuantityWriter.writeAuto(roomK, Dimension.TEMPERATURE);
        return ChartData.of(
                        WindowText.say("fluids.view.curves"),
                        Axis.of(WindowText.say("fluids.chart.temperature"), Dimension.TEMPERATURE),
                        Axis.of(WindowText.say("fluids.chart.pressure"), Dimension.PRESSURE)
                                .log()
                                .above(LOWEST_PA)
                                .in("Pa"),
                        series)
                .withMarks(List.of(new Mark(WindowText.say("fluids.chart.room", room), roomK)))
                .withBands(bands)
                .withSpots(spots);
    }
}
