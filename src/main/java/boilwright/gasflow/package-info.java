/**
 * Published relations for gas and vapour flow: choked nozzles, burner jets, molecular conductance, pump speed, duct
 * friction, and the butane that feeds a burner. Final classes of static methods, plain SI doubles, nothing allocated; no
 * rigs, states or working fluids belong here. Each Javadoc gives source and range; where a relation has no value it gives NaN,
 * which the solvers refuse. May use fluid, numerics, units and errors, and at present uses none of them.
 */
package boilwright.gasflow;
