package boilwright.dashboard.run;

import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Limit;
import boilwright.dashboard.chart.Mark;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.text.WindowText;
import boilwright.drill.DrillAnswer;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.DrillRun.LimitTime;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The curves of a drill: what would happen, beside what happens when the heat is cut. */
final class DrillCharts {
    /** Marks nearer than this to one that is there already are left out, s. */
    private static final double SAME_S = 1;

    /** Ratio of the highest to the lowest pressure from which on it is drawn. */
    private static final double MOVES = 1.2;

    private final DrillAnswer drill;

    DrillCharts(DrillAnswer drill) {
        this.drill = drill;
    }

    List<ChartData> list() {
        List<ChartData> list = new ArrayList<>();
        list.add(chart("run.chart.temperatures", "run.chart.temperature", Dimension.TEMPERATURE, false, temperatures())
                .withLimits(limit(DrillLimit.OIL, "run.chart.limit.oil")));
        List<Series> foreline = both(SeriesQuantity.FORELINE, 0, "run.chart.foreline");
        if (foreline.stream().anyMatch(DrillCharts::moves)) {
            list.add(chart("run.chart.forelines", "run.chart.pressure", Dimension.PRESSURE, true, foreline)
                    .withLimits(limit(DrillLimit.FORELINE, "run.chart.limit.foreline")));
        }
        return list;
    }

    /** Whether a pressure changes so much that a curve shows something. */
    private static boolean moves(Series series) {
        double least = Arrays.stream(series.y()).min().orElse(0);
        double most = Arrays.stream(series.y()).max().orElse(0);
        return most > MOVES * least;
    }

    private ChartData chart(String title, String axis, Dimension dimension, boolean log, List<Series> series) {
        Axis y = Axis.of(WindowText.say(axis), dimension);
        return ChartData.of(
                        WindowText.say(title, DrillAnswer.title(drill.fault())),
                        Axis.time(WindowText.say("run.chart.time")),
                        log ? y.log() : y,
                        series)
                .withMarks(marks());
    }

    private List<Series> temperatures() {
        List<Series> all = new ArrayList<>(both(SeriesQuantity.LIQUID_TEMPERATURE, 0, "run.chart.oil"));
        all.addAll(both(SeriesQuantity.STAGE_WALL, 1, "run.chart.wall"));
        all.addAll(both(SeriesQuantity.WATER_OUT, 0, "run.chart.water-out"));
        return all;
    }

    /** A quantity with the heat left on and, where that changes anything, with the heat cut. */
    private List<Series> both(SeriesQuantity quantity, int stage, String title) {
        List<Series> list = new ArrayList<>();
        String name = WindowText.say(title);
        if (drill.heatEnds()) {
            series(drill.heatOn(), quantity, stage, name).ifPresent(list::add);
            return list;
        }
        series(drill.heatOn(), quantity, stage, WindowText.say("run.chart.left-on", name))
                .ifPresent(list::add);
        boolean itself = drill.byItself().isPresent();
        series(
                        itself ? drill.asItIs() : drill.cutAtOnce(),
                        quantity,
                        stage,
                        WindowText.say(itself ? "run.chart.by-trip" : "run.chart.at-once", name))
                .ifPresent(list::add);
        return list;
    }

    private Optional<Series> series(DrillRun run, SeriesQuantity quantity, int stage, String title) {
        TimeSeries all = run.run().series();
        double failed = drill.atS().orElse(0);
        double[] time = all.column(SeriesQuantity.TIME).values();
        return all.find(quantity, stage).map(column -> {
            int from = 0;
            while (from < time.length - 1 && time[from] < failed) {
                from++;
            }
            double[] x = new double[time.length - from];
            double[] y = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = time[from + i] - failed;
                y[i] = column.values()[from + i];
            }
            return new Series(title, x, y);
        });
    }

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        drill.heatOn().limits().stream()
                .filter(l -> l.limit().harms() && l.passedS().isPresent() && !l.before())
                .sorted((a, b) -> Double.compare(a.orNever(), b.orNever()))
                .forEach(l -> mark(marks, DrillAnswer.title(l.limit()), l.orNever()));
        drill.heatOn().firstJetLostS().ifPresent(t -> mark(marks, WindowText.say("run.chart.first-jet"), t));
        return marks;
    }

    private static void mark(List<Mark> marks, String title, double at) {
        if (marks.stream().noneMatch(m -> Math.abs(m.x() - at) < SAME_S)) {
            marks.add(new Mark(title, at));
        }
    }

    private List<Limit> limit(DrillLimit limit, String title) {
        return drill.heatOn().limits().stream()
                .filter(l -> l.limit() == limit)
                .map(LimitTime::value)
                .map(value -> new Limit(WindowText.say(title), value, Limit.Side.AT_MOST))
                .toList();
    }
}
