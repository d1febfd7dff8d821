/**
 * Work behind the window: one named thread on which answers are computed and files written, so that the window never waits,
 * and the one place where an unexpected fault ends up. Knows no control of a window; may use answers, fluid, files and what
 * they stand on.
 */
package boilwright.dashboard.work;
