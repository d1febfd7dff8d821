/**
 * The cooling circuit as plumbing: in which order the water meets its elements, what each of them costs in pressure, where pump
 * or mains and circuit agree, and what a chiller can carry away. What the water takes up on its way belongs to the thermal
 * network. May use rig, heattransfer, gasflow, fluid, numerics,
 * units and errors.
 */
package boilwright.water;
