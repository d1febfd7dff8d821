/**
 * The page of the run: the order of work along its time lines, the rules it keeps, the faults played through, and the
 * interlocks of the rig. May use pages, charts and the work behind the window; knows nothing of other pages' insides.
 */
package boilwright.dashboard.run;
