package boilwright.dashboard.chart;

/**
 * A line of the grid.
 *
 * @param value where, in the unit of the axis
 * @param text its number; empty for a line between the numbered ones
 */
record Tick(double value, String text) {}
