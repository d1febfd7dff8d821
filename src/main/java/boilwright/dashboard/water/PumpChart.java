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
    /** How far above the most that the supply gives the circuit's curve is drawn. */
    private static final double MOST_OF_HEAD = 1.25;

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
        // Below zero the water would have to drive the pump: nobody runs it there.
        double[] given = Arrays.stream(curves.supplyHeadPa())
                .map(p -> p < 0 ? Double.NaN : p)
                .toArray();
        // Far above what the supply can give, the circuit's curve would leave no height for the rest.
        double highest = MOST_OF_HEAD * Math.max(given[0], point.circuitDropPa());
        double[] shown =
                Arrays.stream(taken).map(p -> p > highest ? Double.NaN : p).toArray();
        List<Series> series = new ArrayList<>();
        if (Double.isFinite(given[0])) {
            series.add(new Series(WindowText.say("water.chart.supply"), flow, given));
        }
        series.add(new Series(WindowText.say("water.chart.circuit"), flow, Double.isFinite(given[0]) ? shown : taken));
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
