package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a chart says in words: readings, titles of its axes, what it shows for those who don't see it. */
final class ChartWords {
    private static final double SMALLEST_SHOWN = 1e-99;

    private ChartWords() {}

    /** A value to read. */
    static String value(double si, UnitSpelling unit) {
        if (!Double.isFinite(si)) {
            return WindowText.say("chart.no-value");
        }
        return QuantityWriter.write(Math.abs(si) < SMALLEST_SHOWN ? 0 : si, unit);
    }

    /** A value without its unit, where the unit stands elsewhere. */
    static String bare(double si, UnitSpelling unit) {
        String words = value(si, unit);
        String ending = " " + unit.text();
        return words.endsWith(ending) ? words.substring(0, words.length() - ending.length()) : words;
    }

    /** Two values to read, the unit once. */
    static String range(double lowSi, double highSi, UnitSpelling unit) {
        if (!Double.isFinite(lowSi) || !Double.isFinite(highSi)) {
            return WindowText.say("chart.no-value");
        }
        return WindowText.say("chart.band.reading", bare(lowSi, unit), value(highSi, unit));
    }

    /** A place of the x axis to read: on a time axis what its clock shows there. */
    static String place(double x, ChartData data, UnitSpelling unit) {
        if (!data.x().isTime()) {
            return value(x, unit);
        }
        Stretch stretch = stretch(x, data);
        if (stretch == null) {
            return Ticks.clock(x);
        }
        return stretch.ticking()
                ? WindowText.say("chart.place", stretch.title(), Ticks.clock(x - stretch.fromX()))
                : stretch.title();
    }

    /** The part of a time axis that a place lies in; null where it has no parts. */
    static Stretch stretch(double x, ChartData data) {
        Stretch found = null;
        for (Stretch stretch : data.x().stretches()) {
            if (found == null || x >= stretch.fromX()) {
                found = stretch;
            }
        }
        return found;
    }

    /** What stands at the x axis. */
    static String xTitle(ChartData data, Choice choice) {
        return data.x().isTime()
                ? WindowText.say("chart.axis.time", data.x().title())
                : title(data.x(), choice.xUnit());
    }

    /** What stands at the y axis. */
    static String yTitle(ChartData data, Choice choice) {
        return title(data.y(), choice.yUnit());
    }

    /** A quantity with its unit, for axes and heads of columns. */
    static String title(Axis axis, UnitSpelling unit) {
        return unit.isPlain() ? axis.title() : WindowText.say("chart.axis", axis.title(), unit.text());
    }

    static String limit(Limit limit, UnitSpelling unit) {
        String key = limit.side() == Limit.Side.AT_MOST ? "chart.limit.at-most" : "chart.limit.at-least";
        return WindowText.say(key, limit.title(), value(limit.si(), unit));
    }

    /** What is left out of the picture, in whole sentences; empty when nothing is. */
    static List<String> leftOut(ChartData data, Choice choice) {
        List<String> notes = new ArrayList<>();
        Scale x = choice.xScale();
        Scale y = choice.yScale();
        for (Series one : data.series()) {
            int without = 0;
            for (int i = 0; i < one.x().length; i++) {
                boolean known = Double.isFinite(one.y()[i]);
                if (known && (Double.isNaN(x.t(one.x()[i])) || Double.isNaN(y.t(one.y()[i])))) {
                    without++;
                }
            }
            if (without > 0) {
                notes.add(WindowText.say("chart.not-positive", one.title(), Integer.toString(without)));
            }
        }
        return notes;
    }

    /** What the chart shows, in whole sentences. */
    static String describe(ChartData data, Choice choice) {
        List<String> words = new ArrayList<>();
        words.add(WindowText.say(
                "chart.describe", data.title(), ChartWords.yTitle(data, choice), ChartWords.xTitle(data, choice)));
        for (Series one : data.series()) {
            words.add(describe(one, data, choice));
        }
        for (Band band : data.bands()) {
            words.add(WindowText.say("chart.describe.band", band.title()));
        }
        for (Limit limit : data.limits()) {
            words.add(WindowText.say("chart.describe.limit", limit(limit, choice.yUnit())));
        }
        for (Spot spot : data.spots()) {
            words.add(WindowText.say(
                    "chart.describe.spot",
                    spot.title(),
                    place(spot.x(), data, choice.xUnit()),
                    value(spot.y(), choice.yUnit())));
        }
        if (!data.marks().isEmpty()) {
            words.add(WindowText.say(
                    "chart.describe.marks",
                    data.marks().stream()
                            .sorted(java.util.Comparator.comparingDouble(Mark::x))
                            .map(m -> WindowText.say(
                                    "chart.describe.mark", m.title(), place(m.x(), data, choice.xUnit())))
                            .collect(Collectors.joining(", "))));
        }
        words.addAll(leftOut(data, choice));
        return String.join(" ", words);
    }

    private static String describe(Series one, ChartData data, Choice choice) {
        int first = -1;
        int last = -1;
        int highest = -1;
        for (int i = 0; i < one.y().length; i++) {
            if (Double.isFinite(one.y()[i])) {
                first = first < 0 ? i : first;
                last = i;
                highest = highest < 0 || one.y()[i] > one.y()[highest] ? i : highest;
            }
        }
        if (first < 0) {
            return WindowText.say("chart.describe.empty", one.title());
        }
        UnitSpelling unit = choice.yUnit();
        return WindowText.say(
                "chart.describe.series",
                one.title(),
                value(one.y()[first], unit),
                value(one.y()[last], unit),
                value(one.y()[highest], unit),
                place(one.x()[highest], data, choice.xUnit()));
    }
}
