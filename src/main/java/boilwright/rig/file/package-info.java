/**
 * Rig files: reading with every fault named, writing, steps from older versions of the format, and the published JSON
 * Schema. What a field may hold is said by the field catalogue in rig, not here; nothing is computed. May use rig, units
 * and errors.
 */
package boilwright.rig.file;
