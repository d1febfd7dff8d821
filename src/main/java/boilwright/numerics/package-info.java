/**
 * Roots from fixed brackets, integration of stiff systems with dense output and events, evenly spread samples, quantiles and shares
 * of variance, progress and cancelling. Knows
 * nothing of pumps, fluids or units. May use errors.
 */
package boilwright.numerics;
