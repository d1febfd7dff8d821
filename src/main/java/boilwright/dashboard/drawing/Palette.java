package boilwright.dashboard.drawing;

import boilwright.dashboard.model.TemperatureScale;
import javafx.scene.paint.Color;

/**
 * The colours that mean nothing: lines, words and page, as the theme tells them.
 *
 * @param ink lines and figures
 * @param muted words beside them
 * @param faint leader lines and frames
 * @param paper the page
 */
record Palette(Color ink, Color muted, Color faint, Color paper) {
    /** The scale of temperatures that suits the page. */
    TemperatureScale.Look look() {
        return paper.getBrightness() > 0.5 ? TemperatureScale.Look.ON_LIGHT : TemperatureScale.Look.ON_DARK;
    }

    /** The same colour with less cover. */
    static Color thin(Color color, double opacity) {
        return Color.color(color.getRed(), color.getGreen(), color.getBlue(), opacity);
    }
}
