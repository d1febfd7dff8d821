package boilwright.dashboard.chart;

/**
 * A named part of a time axis on which a clock of its own runs.
 *
 * @param title its name
 * @param fromX where it starts on the axis, s
 * @param toX where it ends on the axis, s
 * @param ticking whether its clock runs from 0 at its start; a part that lasts as long as one likes has none
 */
public record Stretch(String title, double fromX, double toX, boolean ticking) {}
