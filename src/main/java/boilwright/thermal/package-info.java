/**
 * The transient thermal model of one rig: source, boiler, vapour column, jets, condensing walls and water as blocks of one
 * network, its steady and needed states, and the time line of a run. Judging the results is the business of answers. May
 * use water, heattransfer, gasflow, rig, fluid, numerics, units and errors.
 */
package boilwright.thermal;
