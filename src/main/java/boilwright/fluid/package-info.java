/**
 * Working fluids, coolants and air: property interfaces with units, ranges and sources, and the reader of the files in
 * fluid-data. Knows nothing of pumps. May use numerics, units, files and errors.
 */
package boilwright.fluid;
