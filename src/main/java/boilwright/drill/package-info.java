/**
 * Faults played through: what goes wrong in which order, what acts by itself, what to do first, how long there is, and which
 * trip or battery would have caught it; and from these the list of interlocks that a rig should have. Runs come from thermal,
 * what is usual at the rig from the answers of its check. May use answers, thermal, rig, fluid and what they stand on.
 */
package boilwright.drill;
