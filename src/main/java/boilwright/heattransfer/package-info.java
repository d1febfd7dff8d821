/**
 * Published relations for heat transfer, pressure loss in pipes and glass stress: one final class of static methods per
 * relation, named after it, plain SI doubles in and out, nothing allocated. No fluids, rigs or states belong here: the caller
 * brings the properties. Each Javadoc gives the source and the range it was published for; outside that range the formula is
 * still evaluated (noting it is the caller's work), and where it has no value it gives NaN, which the solvers refuse, never a
 * made-up number. May use fluid, numerics, units and errors, and at present uses none of them.
 */
package boilwright.heattransfer;
