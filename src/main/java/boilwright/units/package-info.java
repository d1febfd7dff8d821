/**
 * The accepted spellings of units, reading and writing of quantities with a fixed locale, the likely slips of the
 * trade, and physical constants. Behind it everything is an SI double. May use errors.
 */
package boilwright.units;
