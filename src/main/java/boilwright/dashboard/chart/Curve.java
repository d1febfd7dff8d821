package boilwright.dashboard.chart;

import java.util.List;

/** Reading of a curve between its points, along the lines that are drawn. */
final class Curve {
    private static final int SAMPLES = 9;

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

    /** How many curves pass through a box of the picture. */
    static int crossing(List<Series> curves, Box box, Scale xScale, Scale yScale) {
        int count = 0;
        for (Series one : curves) {
            count += crosses(one, box, xScale, yScale) ? 1 : 0;
        }
        return count;
    }

    private static boolean crosses(Series one, Box box, Scale xScale, Scale yScale) {
        double before = Double.NaN;
        for (int k = 0; k < SAMPLES; k++) {
            double place = xScale.si(box.left() + box.width() * k / (SAMPLES - 1));
            double at = yScale.px(at(one.x(), one.y(), place, xScale, yScale));
            if (at > box.top() - 1 && at < box.bottom() + 1
                    || before < box.top() && at > box.bottom()
                    || before > box.bottom() && at < box.top()) {
                return true;
            }
            before = at;
        }
        return false;
    }
}
