package boilwright.dashboard.chart;

/**
 * One curve.
 *
 * @param title what people call it; stands at the curve's end
 * @param x SI, finite and never falling; of several points at one place, which show a jump, the last counts from there on; do
 *     not change
 * @param y SI, one for each x; NaN leaves a gap; do not change
 */
public record Series(String title, double[] x, double[] y) {
    /** @throws IllegalArgumentException when the lengths differ or x falls or is not finite */
    public Series {
        requireCurve(title, x, y);
    }

    static void requireCurve(String title, double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException(title + " has " + x.length + " places and " + y.length + " values");
        }
        for (int i = 0; i < x.length; i++) {
            if (!Double.isFinite(x[i]) || i > 0 && x[i] < x[i - 1]) {
                throw new IllegalArgumentException(title + " goes back or is not finite at point " + i);
            }
        }
    }
}
