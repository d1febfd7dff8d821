package boilwright.dashboard.water;

import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.Spot;
import boilwright.dashboard.text.WindowText;
import boilwright.units.Dimension;
import boilwright.water.CurvePair;
import boilwright.water.OperatingPoint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the supply gives and what the circuit takes, with the point on which they agree. */
final class PumpChart {
    private PumpChart() {}

    /** The chart; empty when nothing flows or nothing resists. */
    static Optional<ChartData> of(CurvePair curves, OperatingPoint point) {
        double[] flow = curves.flowM3PerS();
        double[] taken = curves.circuitDropPa();
        if (flow.length == 0
                || flow[flow.length - 1] <= 0
                || Arrays.stream(taken).allMatch(p -> p == 0)) {
            return Optional.empty();
        }
        double[] given = curves.supplyHeadPa();
        List<Series> series = new ArrayList<>();
        if (Double.isFinite(given[0])) {
            series.add(new Series(WindowText.say("water.chart.supply"), flow, given));
        }
        series.add(new Series(WindowText.say("water.chart.circuit"), flow, taken));
        return Optional.of(ChartData.of(
                        WindowText.say("water.chart.title"),
                        Axis.of(WindowText.say("water.chart.flow"), Dimension.VOLUME_FLOW)
                                .withZero()
                                .in("L/min"),
                        Axis.of(WindowText.say("water.chart.pressure"), Dimension.PRESSURE)
                                .withZero(),
                        series)
                .withSpots(List.of(new Spot(
                        WindowText.say("water.chart.point"), point.volumeFlowM3PerS(), point.circuitDropPa()))));
    }
}
