/**
 * A run as it happens, held against its plan: clocks, ticks, readings and alarms, the time that remains by what was seen, and
 * the log that survives a crash. Nothing is simulated here: plans and computed runs come from sequence and thermal. May use
 * these, answers, rig, units, files and errors; shows nothing and asks no clock of its own.
 */
package boilwright.companion;
