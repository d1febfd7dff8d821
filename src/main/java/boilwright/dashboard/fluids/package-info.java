/**
 * The fluids page: every working fluid with its figures and their sources, one of them in full, and files of the person's own.
 * Figures come from the fluid library and edits go to the session; nothing is computed here that another surface would need.
 * May use the parts, pages, session and work of the window; not its frame.
 */
package boilwright.dashboard.fluids;
