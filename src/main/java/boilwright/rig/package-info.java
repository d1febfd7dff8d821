/**
 * The immutable description of one rig: pump, charge, heat source, cooling, foreline and room, all in SI, together with
 * the field catalogue (what each field means and what it may hold), the typical values and the parameter registry (the
 * uncertain defaults of the model). No physics is computed here. May use fluid, units and errors.
 */
package boilwright.rig;
