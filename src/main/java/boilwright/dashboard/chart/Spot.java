package boilwright.dashboard.chart;

/**
 * One marked point, such as a crossing of two curves.
 *
 * @param title what is there
 * @param x SI, finite
 * @param y SI, finite
 */
public record Spot(String title, double x, double y) {}
