package boilwright.dashboard.chart;

import javafx.scene.paint.Color;

/**
 * How a line is drawn.
 *
 * @param color its colour
 * @param width px
 * @param dash lengths of dashes and gaps, px; empty for an unbroken line; do not change
 */
record Pen(Color color, double width, double... dash) {}
