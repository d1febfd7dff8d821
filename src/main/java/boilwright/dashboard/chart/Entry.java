package boilwright.dashboard.chart;

/**
 * One name beside the plot.
 *
 * @param title the name, as long as there is room
 * @param index number of the curve or of the band
 * @param isBand whether it names a band
 * @param endX where the curve ends in view, px
 * @param endY height of its end, px
 * @param y middle of the name, px
 */
record Entry(String title, int index, boolean isBand, double endX, double endY, double y) {}
