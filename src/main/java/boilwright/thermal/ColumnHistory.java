package boilwright.thermal;

/**
 * Temperatures of the column along a run, for drawing it.
 *
 * @param heightsM middle heights of the cells, m; do not change
 * @param temperatureK temperatures by time (the same times as the series) and cell, K; do not change
 */
public record ColumnHistory(double[] heightsM, double[][] temperatureK) {}
