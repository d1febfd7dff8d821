package boilwright.dashboard.chart;

/**
 * A shaded range around or beside the curves.
 *
 * @param title what it shows
 * @param x SI, finite and never falling; do not change
 * @param low lower edge, SI; NaN leaves a gap; do not change
 * @param high upper edge, SI; do not change
 */
public record Band(String title, double[] x, double[] low, double[] high) {
    /** @throws IllegalArgumentException when the lengths differ or x falls or is not finite */
    public Band {
        Series.requireCurve(title, x, low);
        Series.requireCurve(title, x, high);
    }
}
