/**
 * The window: its start, its frame with the pages in it, its themes and actions, and what happens to rig files. What is drawn
 * and edited inside the frame belongs to the packages below this one. With them the only package that may use JavaFX; may use
 * everything but the command line.
 */
package boilwright.dashboard;
