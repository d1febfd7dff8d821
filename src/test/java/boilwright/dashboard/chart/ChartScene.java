package boilwright.dashboard.chart;

import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;

/** Data for charts in tests, made from formulas alone. */
final class ChartScene {
    private ChartScene() {}

    /** A wave of so many points over an hour, K, rising from one curve to the next. */
    static Series wave(String title, int points, double phase) {
        double[] x = new double[points];
        double[] y = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = 3600.0 * i / (points - 1);
            y[i] = 293.15 + 20 * phase + 120 * (1 - Math.exp(-x[i] / 900)) + 3 * Math.sin(x[i] / 60 + phase);
        }
        return new Series(title, x, y);
    }

    /** Temperatures against an hour, with a limit and events. */
    static ChartData temperatures(int curves, int points) {
        List<Series> all = new ArrayList<>();
        for (int k = 0; k < curves; k++) {
            all.add(wave("curve " + (char) ('A' + k), points, k));
        }
        return ChartData.of("Temperatures", Axis.time("time"), Axis.of("temperature", Dimension.TEMPERATURE), all)
                .withLimits(List.of(new Limit("oil", 480, Limit.Side.AT_MOST)))
                .withMarks(List.of(new Mark("heat on", 0), new Mark("first vapour", 600), new Mark("jet lights", 640)));
    }

    /** Half an hour up, ten minutes at rest, half an hour down. */
    static ChartData inParts() {
        List<Stretch> parts = List.of(
                new Stretch("up", 0, 1800, true),
                new Stretch("rest", 1800, 2400, false),
                new Stretch("down", 2400, 3600, true));
        return ChartData.of(
                "Parts",
                Axis.time("time", parts),
                Axis.of("temperature", Dimension.TEMPERATURE),
                List.of(wave("A", 61, 0)));
    }
}
