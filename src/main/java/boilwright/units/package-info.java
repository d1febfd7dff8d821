/**
 * The accepted spellings of units, reading and writing of quantities with a fixed locale, and the likely slips of the
 * trade. Behind it everything is an SI double. May use errors.
 */
package boilwright.units;
