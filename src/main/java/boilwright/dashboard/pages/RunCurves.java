package boilwright.dashboard.pages;

import boilwright.answers.RunAnswer;
import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.Mark;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.chart.Stretch;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import boilwright.report.EventWords;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The records of warm-up and cool-down and the state at rest between them, as curves along the axis of the time band. */
final class RunCurves {
    /** What a person waits for, the more important first: where there is not room for every name, those are named. */
    static final List<EventKind> STEPS = List.of(
            EventKind.HEAT_OFF,
            EventKind.FULL_PUMPING,
            EventKind.AIR_ALLOWED,
            EventKind.LIMIT_REACHED,
            EventKind.HEAT_ON,
            EventKind.WATER_MAY_STOP,
            EventKind.TOUCH_SAFE,
            EventKind.FIRST_VAPOUR,
            EventKind.FUEL_EMPTY);

    /** What the jets do, the more important first. */
    static final List<EventKind> JETS = List.of(
            EventKind.HEAT_OFF,
            EventKind.FULL_PUMPING,
            EventKind.HEAT_ON,
            EventKind.JETS_GONE,
            EventKind.FIRST_VAPOUR,
            EventKind.JET_LIT,
            EventKind.JET_LOST,
            EventKind.FLOW_ZERO,
            EventKind.FRONT_AT_STAGE,
            EventKind.JET_FULL);

    private final RunTimeline timeline;
    private final RunResult warm;
    private final Optional<RunResult> cool;
    private final MomentState rest;
    private final double[] x;

    RunCurves(RunTimeline timeline, RigAnswer answer) {
        this.timeline = timeline;
        warm = answer.check().warmup();
        cool = answer.cooldown().map(RunAnswer::run);
        rest = timeline.at((timeline.restStartS() + timeline.cooldownStartS()) / 2);
        x = joined(times(warm, 0), timeline.restStartS(), timeline.cooldownStartS(), coolTimes());
    }

    private double[] coolTimes() {
        return cool.map(run -> times(run, timeline.cooldownStartS())).orElseGet(() -> new double[0]);
    }

    private static double[] times(RunResult run, double startS) {
        double[] times = run.series().column(SeriesQuantity.TIME).values().clone();
        for (int i = 0; i < times.length; i++) {
            times[i] += startS;
        }
        return times;
    }

    /** The axis, with the clocks of its parts. */
    Axis axis() {
        List<Stretch> parts = new ArrayList<>();
        parts.add(new Stretch(WindowText.say("pages.time.warmup"), 0, timeline.restStartS(), true));
        parts.add(new Stretch(
                WindowText.say("pages.time.rest"), timeline.restStartS(), timeline.cooldownStartS(), false));
        if (cool.isPresent()) {
            parts.add(new Stretch(
                    WindowText.say("pages.time.cooldown"), timeline.cooldownStartS(), timeline.endS(), true));
        }
        return Axis.time(WindowText.say("pages.time.axis"), parts);
    }

    /**
     * Some of what happens.
     *
     * @param kinds which events, the more important first
     */
    List<Mark> marks(List<EventKind> kinds) {
        return timeline.marks().stream()
                .filter(event -> kinds.contains(event.kind()))
                .sorted(Comparator.comparingInt(event -> kinds.indexOf(event.kind())))
                .map(event -> new Mark(EventWords.title(event), event.timeS().getAsDouble()))
                .toList();
    }

    /**
     * A recorded quantity.
     *
     * @param quantity what the runs recorded
     * @param stage number of its stage from 1, or 0
     * @param title what it is called here
     * @param atRest the same quantity at rest
     * @return empty when the rig has no such quantity
     */
    Optional<Series> curve(SeriesQuantity quantity, int stage, String title, ToDoubleFunction<MomentState> atRest) {
        Optional<double[]> before = values(warm, quantity, stage);
        if (before.isEmpty()) {
            return Optional.empty();
        }
        double[] after = cool.flatMap(run -> values(run, quantity, stage)).orElseGet(() -> unknown(coolTimes().length));
        double between = atRest.applyAsDouble(rest);
        return Optional.of(new Series(title, x, joined(before.get(), between, between, after)));
    }

    private static Optional<double[]> values(RunResult run, SeriesQuantity quantity, int stage) {
        return run.series().find(quantity, stage).map(TimeSeries.Column::values);
    }

    private static double[] unknown(int count) {
        double[] values = new double[count];
        java.util.Arrays.fill(values, Double.NaN);
        return values;
    }

    private static double[] joined(double[] before, double first, double second, double[] after) {
        double[] all = new double[before.length + 2 + after.length];
        System.arraycopy(before, 0, all, 0, before.length);
        all[before.length] = first;
        all[before.length + 1] = second;
        System.arraycopy(after, 0, all, before.length + 2, after.length);
        return all;
    }
}
