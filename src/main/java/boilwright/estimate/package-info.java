/**
 * A whole rig from what can be measured on the outside of a pump: typical proportions for everything else, throats that
 * fit the power at which the pump works, every guess marked with its basis, and which of the guesses moves the answer
 * most. No surface and no file of the user is touched. May use thermal, rig and its files, fluid, numerics, units and
 * errors.
 */
package boilwright.estimate;
