/**
 * The vacuum page: the line from the chamber to the backing pump drawn piece by piece, the pressure along it and against time,
 * where the gas comes from, what each change would gain, and the rise test. Uses the charts and the general parts of pages; no
 * physics belongs here.
 */
package boilwright.dashboard.vacuum;
