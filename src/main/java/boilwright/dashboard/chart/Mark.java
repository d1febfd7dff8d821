package boilwright.dashboard.chart;

/**
 * Something that happens at a place of the x axis.
 *
 * @param title what happens, in a few words
 * @param x where, SI, finite
 */
public record Mark(String title, double x) {}
