package boilwright.dashboard.chart;

/**
 * One event in the picture.
 *
 * @param title its name
 * @param x px
 * @param place where its name stands
 */
record Flag(String title, double x, MarkLanes.Place place) {}
