/**
 * The pump drawn to scale from the rig's own numbers, cut open, with its parts to hover and focus, and the legend of its
 * colours. Knows no page and computes no physics; may use the rig, the dashboard's model, words and units.
 */
package boilwright.dashboard.drawing;
