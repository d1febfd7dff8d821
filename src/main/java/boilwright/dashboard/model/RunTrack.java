package boilwright.dashboard.model;

import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TimeSeries;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/** The time line of one run, read between its records. */
final class RunTrack {
    /** A place between two records. */
    record Place(int before, int after, double share) {}

    private final double[] times;
    private final Map<String, double[]> columns = new HashMap<>();
    private final double[] heightsM;
    private final double[][] cellsK;

    RunTrack(RunResult run) {
        for (TimeSeries.Column column : run.series().columns()) {
            columns.put(column.key(), column.values());
        }
        times = run.series().column(SeriesQuantity.TIME).values();
        heightsM = run.column().heightsM();
        cellsK = run.column().temperatureK();
    }

    /** When it ends, s. */
    double endS() {
        return times[times.length - 1];
    }

    double[] heightsM() {
        return heightsM;
    }

    /** Where a time lies. Of several records at one time, which show a jump, the last counts from then on. */
    Place place(double s) {
        if (s >= endS()) {
            return new Place(times.length - 1, times.length - 1, 0);
        }
        int found = Arrays.binarySearch(times, s);
        int before = found >= 0 ? found : Math.max(0, -found - 2);
        while (before < times.length - 1 && times[before + 1] <= s) {
            before++;
        }
        if (s <= times[before]) {
            return new Place(before, before, 0);
        }
        return new Place(before, before + 1, (s - times[before]) / (times[before + 1] - times[before]));
    }

    boolean has(SeriesQuantity quantity) {
        return columns.containsKey(quantity.key());
    }

    /** A value, NaN when the run has no such column. */
    double value(SeriesQuantity quantity, Place at) {
        return value(quantity, 0, at);
    }

    /** A value of a stage, counted from 1; NaN when the run has no such column. */
    double value(SeriesQuantity quantity, int stage, Place at) {
        double[] values = columns.get(quantity.key(stage));
        return values == null ? Double.NaN : between(values[at.before()], values[at.after()], at.share());
    }

    /** A value of a stage that is one or the other and never between. */
    boolean flag(SeriesQuantity quantity, int stage, Place at) {
        return columns.get(quantity.key(stage))[at.before()] > 0.5;
    }

    double first(SeriesQuantity quantity) {
        return columns.get(quantity.key())[0];
    }

    double last(SeriesQuantity quantity) {
        double[] values = columns.get(quantity.key());
        return values == null ? Double.NaN : values[values.length - 1];
    }

    double[] cellsK(Place at) {
        double[] before = cellsK[at.before()];
        double[] after = cellsK[at.after()];
        double[] cells = new double[before.length];
        for (int j = 0; j < cells.length; j++) {
            cells[j] = between(before[j], after[j], at.share());
        }
        return cells;
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}
