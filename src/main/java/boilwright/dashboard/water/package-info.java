/**
 * The water page: the circuit as it is plumbed, what pump and circuit agree on, what may be tried without changing the rig, and
 * two supplies side by side. Figures come from answers and water and edits go to the session; nothing is computed here that
 * another surface would need. May use the charts, pages, session and work of the window; not its frame.
 */
package boilwright.dashboard.water;
