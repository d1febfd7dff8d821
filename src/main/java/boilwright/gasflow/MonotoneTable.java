package boilwright.gasflow;

/** Figures of a small table with straight lines between its rows and columns; beyond its edges the edge holds. */
final class MonotoneTable {
    private final double[] rows;
    private final double[] columns;
    private final double[][] values;

    MonotoneTable(double[] rows, double[] columns, double[][] values) {
        this.rows = rows;
        this.columns = columns;
        this.values = values;
    }

    double at(double row, double column) {
        int i = below(rows, row);
        int j = below(columns, column);
        double r = share(rows, i, row);
        double c = share(columns, j, column);
        double first = values[i][j] + c * (values[i][j + 1] - values[i][j]);
        double second = values[i + 1][j] + c * (values[i + 1][j + 1] - values[i + 1][j]);
        return first + r * (second - first);
    }

    private static int below(double[] axis, double x) {
        int i = 0;
        while (i < axis.length - 2 && axis[i + 1] <= x) {
            i++;
        }
        return i;
    }

    private static double share(double[] axis, int i, double x) {
        return Math.max(0, Math.min(1, (x - axis[i]) / (axis[i + 1] - axis[i])));
    }
}
