package boilwright.dashboard.chart;

/** Reading of a curve between its points, along the lines that are drawn. */
final class Curve {
    private Curve() {}

    /** Index of the last point at or before a place; -1 before the first. */
    static int before(double[] x, double at) {
        int low = 0;
        int high = x.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (x[middle] <= at) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low - 1;
    }

    /**
     * The SI value at a place, on the straight line that the scales draw between two points.
     *
     * @return NaN beyond the ends and in gaps
     */
    static double at(double[] x, double[] y, double place, Scale xScale, Scale yScale) {
        int i = before(x, place);
        if (i < 0) {
            return Double.NaN;
        }
        if (x[i] == place) {
            return y[i];
        }
        if (i + 1 >= x.length) {
            return Double.NaN;
        }
        double t = between(x, y, i, xScale.t(place), xScale, yScale);
        return Double.isNaN(t) ? Double.NaN : yScale.ofT(t);
    }

    /** The place on the y scale between a point and the next. */
    static double between(double[] x, double[] y, int i, double xT, Scale xScale, Scale yScale) {
        double from = xScale.t(x[i]);
        double to = xScale.t(x[i + 1]);
        double share = to > from ? (xT - from) / (to - from) : 1;
        double low = yScale.t(y[i]);
        double high = yScale.t(y[i + 1]);
        return low + share * (high - low);
    }
}
