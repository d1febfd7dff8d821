package boilwright.dashboard.chart;

import java.util.List;

/**
 * All that a chart shows.
 *
 * @param title what the chart is about
 * @param x the axis to the right
 * @param y the axis upwards
 * @param series the curves; their order gives each its dash and its marker
 * @param limits levels to keep to
 * @param marks what happens where, the more important first: where there is not room for every name, they get theirs
 * @param bands shaded ranges
 * @param spots marked points
 */
public record ChartData(
        String title,
        Axis x,
        Axis y,
        List<Series> series,
        List<Limit> limits,
        List<Mark> marks,
        List<Band> bands,
        List<Spot> spots) {
    public ChartData {
        series = List.copyOf(series);
        limits = List.copyOf(limits);
        marks = List.copyOf(marks);
        bands = List.copyOf(bands);
        spots = List.copyOf(spots);
    }

    /** Curves alone. */
    public static ChartData of(String title, Axis x, Axis y, List<Series> series) {
        return new ChartData(title, x, y, series, List.of(), List.of(), List.of(), List.of());
    }

    /** The same with these limits. */
    public ChartData withLimits(List<Limit> those) {
        return new ChartData(title, x, y, series, those, marks, bands, spots);
    }

    /** The same with these events. */
    public ChartData withMarks(List<Mark> those) {
        return new ChartData(title, x, y, series, limits, those, bands, spots);
    }

    /** The same with these shaded ranges. */
    public ChartData withBands(List<Band> those) {
        return new ChartData(title, x, y, series, limits, marks, those, spots);
    }

    /** The same with these marked points. */
    public ChartData withSpots(List<Spot> those) {
        return new ChartData(title, x, y, series, limits, marks, bands, those);
    }
}
