package boilwright.dashboard.chart;

import java.util.ArrayList;
import java.util.List;

/** The points of all curves and bands as rows of a table: one row for each place, empty where a curve has no point. */
final class ChartRows {
    private static final int NONE = -1;

    /** One column: its title and the values of one curve or of one edge of a band. */
    private record Source(String title, double[] x, double[] y) {}

    private final List<Source> sources = new ArrayList<>();
    private final List<int[]> rows = new ArrayList<>();
    private final List<Double> places = new ArrayList<>();

    private ChartRows() {}

    static ChartRows of(ChartData data, String lowWord, String highWord) {
        ChartRows all = new ChartRows();
        data.series().forEach(s -> all.sources.add(new Source(s.title(), s.x(), s.y())));
        for (Band band : data.bands()) {
            all.sources.add(new Source(band.title() + ", " + lowWord, band.x(), band.low()));
            all.sources.add(new Source(band.title() + ", " + highWord, band.x(), band.high()));
        }
        all.merge();
        return all;
    }

    private void merge() {
        int[] next = new int[sources.size()];
        while (true) {
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < next.length; k++) {
                double[] x = sources.get(k).x();
                least = next[k] < x.length ? Math.min(least, x[next[k]]) : least;
            }
            if (least == Double.POSITIVE_INFINITY) {
                return;
            }
            int[] row = new int[next.length];
            for (int k = 0; k < next.length; k++) {
                double[] x = sources.get(k).x();
                row[k] = next[k] < x.length && x[next[k]] == least ? next[k]++ : NONE;
            }
            rows.add(row);
            places.add(least);
        }
    }

    int size() {
        return rows.size();
    }

    int columns() {
        return sources.size();
    }

    String title(int column) {
        return sources.get(column).title();
    }

    /** Place of a row, SI. */
    double place(int row) {
        return places.get(row);
    }

    /** Whether a curve has a point in a row; its value may still be unknown. */
    boolean has(int row, int column) {
        return rows.get(row)[column] != NONE;
    }

    /** A value, SI; NaN where there is none. */
    double value(int row, int column) {
        int index = rows.get(row)[column];
        return index == NONE ? Double.NaN : sources.get(column).y()[index];
    }

    /** The last row at or before a place; -1 when all are after it. */
    int before(double place) {
        int found = -1;
        for (int low = 0, high = size(); low < high; ) {
            int middle = (low + high) >>> 1;
            if (place(middle) <= place) {
                found = middle;
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return found;
    }
}
