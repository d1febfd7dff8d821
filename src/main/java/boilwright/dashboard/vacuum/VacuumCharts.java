package boilwright.dashboard.vacuum;

import boilwright.answers.VacuumAnswer;
import boilwright.dashboard.chart.Axis;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.Limit;
import boilwright.dashboard.chart.Mark;
import boilwright.dashboard.chart.Series;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.vacuum.VacuumState;
import boilwright.vacuum.VacuumTimeline;
import java.util.ArrayList;
import java.util.List;

/** The charts of the vacuum page. */
final class VacuumCharts {
    /** Lowest pressure drawn, Pa: a logarithmic axis knows no zero. */
    private static final double LEAST_PA = 1e-12;

    private VacuumCharts() {}

    /** Pressure along the line, now and at the end. */
    static ChartData along(VacuumAnswer answer) {
        GasSide side = answer.check().rig().vacuum().orElseThrow();
        double[] place = places(side);
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < side.line().size(); i++) {
            marks.add(new Mark(side.line().get(i).name(), (place[i] + place[i + 1]) / 2));
        }
        boolean pumps = answer.check().steady().speedM3PerS() > 0;
        String when = QuantityWriter.writeAuto(answer.lookS(), Dimension.TIME);
        return ChartData.of(
                        WindowText.say("vacuum.chart.along"),
                        Axis.of(WindowText.say("vacuum.chart.place"), Dimension.LENGTH),
                        Axis.of(WindowText.say("vacuum.chart.pressure"), Dimension.PRESSURE)
                                .log(),
                        List.of(
                                new Series(
                                        WindowText.say(pumps ? "vacuum.chart.now" : "vacuum.chart.begin"),
                                        place,
                                        pressures(answer.before())),
                                new Series(WindowText.say("vacuum.chart.end", when), place, pressures(answer.end()))))
                .withMarks(marks)
                .withLimits(target(answer));
    }

    private static double[] places(GasSide side) {
        double[] place = new double[side.line().size() + 1];
        for (int i = 0; i < side.line().size(); i++) {
            place[i + 1] = place[i] + length(side.line().get(i));
        }
        return place;
    }

    /** What a piece takes of the axis, m: its length; its bore when it has none of its own. */
    private static double length(LinePiece piece) {
        double axis = piece.shape().axisM();
        return axis > 0 ? axis : piece.shape().inletDiameterM();
    }

    private static double[] pressures(VacuumState state) {
        return state.junctionPa().stream()
                .mapToDouble(pa -> Math.max(LEAST_PA, pa))
                .toArray();
    }

    private static List<Limit> target(VacuumAnswer answer) {
        List<Limit> limits = new ArrayList<>();
        answer.check()
                .rig()
                .vacuum()
                .orElseThrow()
                .targetPa()
                .ifPresent(pa -> limits.add(new Limit(WindowText.say("vacuum.chart.target"), pa, Limit.Side.AT_MOST)));
        return limits;
    }

    /** Pressures against time. */
    static ChartData course(VacuumAnswer answer) {
        VacuumTimeline line = answer.timeline();
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark(WindowText.say("vacuum.chart.down"), 0));
        line.crossover().timeS().ifPresent(t -> marks.add(new Mark(WindowText.say("vacuum.chart.crossover"), t)));
        return ChartData.of(
                        WindowText.say("vacuum.chart.course"),
                        Axis.time(WindowText.say("vacuum.chart.time")),
                        Axis.of(WindowText.say("vacuum.chart.pressure"), Dimension.PRESSURE)
                                .log(),
                        List.of(
                                new Series(WindowText.say("vacuum.chart.gauge"), line.timeS(), line.gaugePa()),
                                new Series(WindowText.say("vacuum.chart.inlet"), line.timeS(), line.inletPa()),
                                new Series(WindowText.say("vacuum.chart.foreline"), line.timeS(), line.forelinePa())))
                .withMarks(marks)
                .withLimits(target(answer));
    }
}
