package boilwright.dashboard.chart;

/**
 * A text in the picture.
 *
 * @param text the words
 * @param x where they begin, are centred or end, px
 * @param y their middle, px
 */
record Caption(String text, double x, double y) {}
