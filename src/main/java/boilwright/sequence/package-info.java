/**
 * The order of work at a rig: a plan from cold to pumping to cold, the rules that hold for it as data, and the checker that
 * holds every step against the simulated run. Nothing is simulated here: runs come from thermal, pressures from vacuum, words
 * about margins from answers. May use these, rig, fluid and what they stand on; knows nothing of pages and commands.
 */
package boilwright.sequence;
