/**
 * Charts of the window: curves against time or any other quantity, with limits, events, bands and marked points, their table and
 * their files. What is plotted arrives as SI arrays; nothing here knows pumps, rigs or answers. May use units, files and the
 * window's words.
 */
package boilwright.dashboard.chart;
