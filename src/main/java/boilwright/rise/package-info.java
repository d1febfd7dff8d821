/**
 * The pressure-rise test: a record of the pressure in a chamber shut off from its pump is read, described as a leak, as gas
 * from the surfaces or as both, and judged. Knows nothing of rigs and pumps, draws and prints nothing. May use numerics,
 * units, files and errors.
 */
package boilwright.rise;
