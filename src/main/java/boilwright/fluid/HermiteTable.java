package boilwright.fluid;

import java.util.function.DoubleUnaryOperator;

/**
 * A function tabulated on a uniform grid and read by cubic Hermite interpolation: value and slope continuous, no
 * allocation, one multiplication chain per call. The caller keeps the argument inside the span.
 */
final class HermiteTable {
    private static final int COEFFICIENTS = 4;

    private final double low;
    private final double high;
    private final double perStep;
    private final int intervals;
    private final double[] coefficients;

    /**
     * A table through values with given slopes.
     *
     * @param low argument of the first value
     * @param high argument of the last value
     * @param values at equal steps, at least five
     * @param slopes derivative at each
     */
    HermiteTable(double low, double high, double[] values, double[] slopes) {
        this.low = low;
        this.high = high;
        intervals = values.length - 1;
        double step = (high - low) / intervals;
        perStep = 1 / step;
        coefficients = new double[COEFFICIENTS * intervals];
        for (int i = 0; i < intervals; i++) {
            double rise = values[i + 1] - values[i];
            double first = slopes[i] * step;
            double last = slopes[i + 1] * step;
            coefficients[COEFFICIENTS * i] = values[i];
            coefficients[COEFFICIENTS * i + 1] = first;
            coefficients[COEFFICIENTS * i + 2] = 3 * rise - 2 * first - last;
            coefficients[COEFFICIENTS * i + 3] = first + last - 2 * rise;
        }
    }

    /** A table of a smooth function through its values; slopes by differences of fourth order between them. */
    HermiteTable(double low, double high, double[] values) {
        this(low, high, values, slopes(values, (high - low) / (values.length - 1)));
    }

    /** A table of a function with a known derivative. */
    static HermiteTable of(
            double low, double high, int intervals, DoubleUnaryOperator function, DoubleUnaryOperator slope) {
        return new HermiteTable(low, high, sample(low, high, intervals, function), sample(low, high, intervals, slope));
    }

    /** A table of a smooth function; slopes by differences of fourth order between the tabulated values. */
    static HermiteTable of(double low, double high, int intervals, DoubleUnaryOperator function) {
        return new HermiteTable(low, high, sample(low, high, intervals, function));
    }

    /** The function, for an argument inside the span. */
    double value(double x) {
        double u = (x - low) * perStep;
        int i = Math.min((int) u, intervals - 1);
        double d = u - i;
        int k = COEFFICIENTS * i;
        return coefficients[k] + d * (coefficients[k + 1] + d * (coefficients[k + 2] + d * coefficients[k + 3]));
    }

    /** The derivative of exactly what {@link #value} gives. */
    double slope(double x) {
        double u = (x - low) * perStep;
        int i = Math.min((int) u, intervals - 1);
        double d = u - i;
        int k = COEFFICIENTS * i;
        return perStep * (coefficients[k + 1] + d * (2 * coefficients[k + 2] + 3 * d * coefficients[k + 3]));
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    private static double[] sample(double low, double high, int intervals, DoubleUnaryOperator function) {
        double[] values = new double[intervals + 1];
        double step = (high - low) / intervals;
        for (int i = 0; i <= intervals; i++) {
            values[i] = function.applyAsDouble(i == intervals ? high : low + i * step);
        }
        return values;
    }

    private static double[] slopes(double[] y, double step) {
        int n = y.length;
        double[] slopes = new double[n];
        double unit = 12 * step;
        for (int i = 2; i < n - 2; i++) {
            slopes[i] = (y[i - 2] - 8 * y[i - 1] + 8 * y[i + 1] - y[i + 2]) / unit;
        }
        slopes[0] = (-25 * y[0] + 48 * y[1] - 36 * y[2] + 16 * y[3] - 3 * y[4]) / unit;
        slopes[1] = (-3 * y[0] - 10 * y[1] + 18 * y[2] - 6 * y[3] + y[4]) / unit;
        slopes[n - 1] = (25 * y[n - 1] - 48 * y[n - 2] + 36 * y[n - 3] - 16 * y[n - 4] + 3 * y[n - 5]) / unit;
        slopes[n - 2] = (3 * y[n - 1] + 10 * y[n - 2] - 18 * y[n - 3] + 6 * y[n - 4] - y[n - 5]) / unit;
        return slopes;
    }
}
