/**
 * The time band under every page: phases, marks of jets and limits, and the one cursor that drawing and charts follow. It shows a
 * {@link boilwright.dashboard.model.RunTimeline} and knows nothing of rigs, pages or files. What it shows and where the cursor
 * goes is worked out in classes without controls ({@link boilwright.dashboard.band.BandModel} and below); the others only draw it.
 */
package boilwright.dashboard.band;
