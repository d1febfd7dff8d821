package boilwright.dashboard.pages;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Limit;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.model.JetState;
import boilwright.dashboard.model.MomentState;
import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.RigAnswer;
import boilwright.thermal.SeriesQuantity;
import boilwright.units.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The charts of a run: which curves, limits and events stand together. */
public final class RunChartData {
    private final RigAnswer answer;
    private final RunCurves curves;

    /**
     * The charts of one answer.
     *
     * @param timeline its axis
     * @param answer the answer
     */
    public RunChartData(RunTimeline timeline, RigAnswer answer) {
        this.answer = answer;
        curves = new RunCurves(timeline, answer);
    }

    /** Temperatures of oil, boiler, source, column and water. */
    ChartData temperatures() {
        List<Series> all = new ArrayList<>();
        add(all, SeriesQuantity.LIQUID_TEMPERATURE, "pages.time.curve.oil", MomentState::oilK);
        add(all, SeriesQuantity.BOILER_WALL, "pages.time.curve.boiler-wall", MomentState::boilerWallK);
        add(all, SeriesQuantity.SOURCE_TEMPERATURE, "pages.time.curve.source", MomentState::sourceK);
        add(all, SeriesQuantity.COLUMN_TOP, "pages.time.curve.column-top", m -> m.columnK()[m.columnK().length - 1]);
        add(all, SeriesQuantity.WATER_OUT, "pages.time.curve.water-out", MomentState::waterOutK);
        List<Limit> limits = new ArrayList<>();
        limit(limits, MarginId.OIL_BULK, "pages.time.limit.oil");
        limit(limits, MarginId.SOURCE, "pages.time.limit.source");
        limit(limits, MarginId.WATER_OUT, "pages.time.limit.water-out");
        return chart("pages.time.temperatures", "pages.time.axis.temperature", Dimension.TEMPERATURE, false, all)
                .withLimits(limits);
    }

    /** Each jet's share of its full flow. */
    ChartData jets() {
        List<Series> all = new ArrayList<>();
        List<String> names = answer.check().steady().stages().stream()
                .map(stage -> stage.name())
                .toList();
        for (int k = 0; k < names.size(); k++) {
            int jet = k;
            curves.curve(
                            SeriesQuantity.STAGE_FULL_FLOW_FRACTION,
                            k + 1,
                            WindowText.say("pages.time.curve.jet", names.get(k)),
                            m -> m.jets().get(jet).fullFlowFraction())
                    .ifPresent(all::add);
        }
        Limit full = new Limit(WindowText.say("pages.time.limit.full"), JetState.FULL_SHARE, Limit.Side.AT_LEAST);
        return chart("pages.time.jets", "pages.time.axis.share", Dimension.FRACTION, true, all)
                .withLimits(List.of(full))
                .withMarks(curves.marks(RunCurves.JETS));
    }

    /** Pressure over the oil. */
    ChartData pressure() {
        List<Series> all = new ArrayList<>();
        add(all, SeriesQuantity.BOILER_PRESSURE, "pages.time.curve.pressure", MomentState::boilerPressurePa);
        List<Limit> limits = new ArrayList<>();
        limit(limits, MarginId.BOILER_PRESSURE, "pages.time.limit.pressure");
        return chart("pages.time.pressure", "pages.time.axis.pressure", Dimension.PRESSURE, true, all)
                .withLimits(limits)
                .withMarks(curves.marks(RunCurves.JETS));
    }

    /** Heat into the boiler and out of it, and the heat that the jets need. */
    ChartData heat() {
        List<Series> all = new ArrayList<>();
        add(all, SeriesQuantity.HEAT_DELIVERED, "pages.heat.curve.delivered", MomentState::heatDeliveredW);
        add(all, SeriesQuantity.HEAT_TO_WATER, "pages.heat.curve.to-water", MomentState::heatToWaterW);
        add(all, SeriesQuantity.HEAT_TO_AIR, "pages.heat.curve.to-air", MomentState::heatToAirW);
        Limit needed = new Limit(
                WindowText.say("pages.heat.limit.needed"),
                answer.check().needed().heatNeededW(),
                Limit.Side.AT_LEAST);
        return chart("pages.heat.chart", "pages.heat.axis", Dimension.POWER, true, all)
                .withLimits(List.of(needed));
    }

    /**
     * Duty of the supply, the heat of water and pump, against what it can carry away.
     *
     * @param pumpW heat that the supply's pump adds, W
     * @param capacityW what the supply carries away, W; empty when not known or not limited
     */
    public ChartData duty(double pumpW, OptionalDouble capacityW) {
        List<Series> all = new ArrayList<>();
        curves.curve(
                        SeriesQuantity.HEAT_TO_WATER,
                        0,
                        WindowText.say("pages.water.curve.duty"),
                        MomentState::heatToWaterW)
                .map(series -> raised(series, pumpW))
                .ifPresent(all::add);
        List<Limit> limits = new ArrayList<>();
        capacityW.ifPresent(
                w -> limits.add(new Limit(WindowText.say("pages.water.limit.capacity"), w, Limit.Side.AT_MOST)));
        return chart("pages.water.duty", "pages.water.axis.duty", Dimension.POWER, true, all)
                .withLimits(limits);
    }

    /**
     * What a chiller carries away, which an on-off control does in bursts; empty without a chiller.
     *
     * @param pumpW heat that the supply's pump adds, W
     * @param capacityW what it can carry away, W
     */
    public Optional<ChartData> chiller(double pumpW, OptionalDouble capacityW) {
        double rest = answer.check().steady().heatToWaterW() + pumpW;
        double carried = Math.min(rest, capacityW.orElse(rest));
        List<Series> all = new ArrayList<>();
        add(all, SeriesQuantity.CHILLER, "pages.water.curve.chiller", m -> carried);
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of(chart("pages.water.chiller", "pages.water.axis.duty", Dimension.POWER, true, all));
    }

    private static Series raised(Series series, double by) {
        double[] y = series.y().clone();
        for (int i = 0; i < y.length; i++) {
            y[i] += by;
        }
        return new Series(series.title(), series.x(), y);
    }

    /** Temperatures of the water into the pump's circuit and out of it. */
    public ChartData water() {
        List<Series> all = new ArrayList<>();
        double[] in = answer.check()
                .warmup()
                .series()
                .find(SeriesQuantity.WATER_IN)
                .map(column -> column.values())
                .orElseGet(() -> new double[] {Double.NaN});
        add(all, SeriesQuantity.WATER_IN, "pages.water.curve.in", m -> in[in.length - 1]);
        add(all, SeriesQuantity.WATER_OUT, "pages.time.curve.water-out", MomentState::waterOutK);
        List<Limit> limits = new ArrayList<>();
        limit(limits, MarginId.WATER_OUT, "pages.time.limit.water-out");
        return chart("pages.water.temperatures", "pages.time.axis.temperature", Dimension.TEMPERATURE, false, all)
                .withLimits(limits);
    }

    private ChartData chart(String title, String axis, Dimension dimension, boolean zero, List<Series> all) {
        Axis y = Axis.of(WindowText.say(axis), dimension);
        Axis based = zero ? y.withZero() : y;
        Axis upwards = dimension == Dimension.FRACTION ? based.in("%") : based;
        return ChartData.of(WindowText.say(title), curves.axis(), upwards, all)
                .withMarks(curves.marks(RunCurves.STEPS));
    }

    private void add(List<Series> all, SeriesQuantity quantity, String title, ToDoubleFunction<MomentState> atRest) {
        curves.curve(quantity, 0, WindowText.say(title), atRest).ifPresent(all::add);
    }

    private void limit(List<Limit> limits, MarginId id, String title) {
        Optional<Margin> margin = answer.check().margins().stream()
                .filter(m -> m.id() == id && m.limit().isPresent())
                .findFirst();
        margin.ifPresent(m -> limits.add(new Limit(
                WindowText.say(title),
                m.limit().getAsDouble(),
                m.side() == Margin.Side.AT_LEAST ? Limit.Side.AT_LEAST : Limit.Side.AT_MOST)));
    }
}
