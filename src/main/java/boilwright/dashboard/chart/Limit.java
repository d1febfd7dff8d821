package boilwright.dashboard.chart;

/**
 * A level that the curves must keep to.
 *
 * @param title whose limit it is
 * @param si the level, in the SI unit of the y axis, finite
 * @param side which side of it is good
 */
public record Limit(String title, double si, Side side) {
    /** Which side of a limit is good. */
    public enum Side {
        AT_LEAST,
        AT_MOST
    }
}
