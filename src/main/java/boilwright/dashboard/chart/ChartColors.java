package boilwright.dashboard.chart;

import javafx.scene.paint.Color;

/**
 * The colours of a chart. None of them means anything: what must be told apart differs in dash, marker and words.
 *
 * @param ink curves, figures and the cursor
 * @param muted axes, events and words beside the curves
 * @param faint the grid
 * @param shade shaded ranges
 * @param paper the page
 */
record ChartColors(Color ink, Color muted, Color faint, Color shade, Color paper) {
    /** On white paper, for files. */
    static final ChartColors PRINTED = new ChartColors(
            Color.web("#1f2328"), Color.web("#59636e"), Color.web("#d8dce0"), Color.web("#e4e7eb"), Color.WHITE);
}
