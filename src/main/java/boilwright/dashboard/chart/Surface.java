package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import javafx.scene.paint.Color;

/** What a chart is painted on: a canvas of the window or a drawing in a file. Pixels, y downwards. */
interface Surface {
    /** On which side of its place a text stands. */
    enum Align {
        LEFT,
        CENTER,
        RIGHT
    }

    /** The type that texts are set in. */
    Lettering lettering();

    /** Begins a part of the drawing; what it is called can be read where the surface allows it. */
    void begin(String title);

    /** Ends the part begun last. */
    void end();

    /** One line of text with its middle at a height; at its place it begins, is centred or ends. */
    void text(String text, double x, double middleY, Align align, boolean bold, Color color);

    /** An open line through the first so many points. */
    void line(double[] xs, double[] ys, int count, Pen pen);

    /** A filled closed shape around the first so many points. */
    void fill(double[] xs, double[] ys, int count, Color color);

    /**
     * How a line is drawn.
     *
     * @param color its colour
     * @param width px
     * @param dash lengths of dashes and gaps, px; empty for an unbroken line; do not change
     */
    record Pen(Color color, double width, double... dash) {}
}
