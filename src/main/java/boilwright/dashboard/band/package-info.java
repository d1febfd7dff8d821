/**
 * The time band under every page: phases, marks of jets and limits, and the one cursor that drawing and charts follow. It shows a
 * {@link boilwright.dashboard.model.RunTimeline} and knows nothing of rigs, pages or files.
 */
package boilwright.dashboard.band;
