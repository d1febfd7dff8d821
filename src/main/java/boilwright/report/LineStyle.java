package boilwright.report;

import boilwright.thermal.TimeSeries.Column;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Line2D;
import org.jfree.chart.LegendItemSource;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.renderer.xy.XYItemRenderer;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.HorizontalAlignment;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/**
 * Lines that can be told apart without colour: each has its own dash, and what belongs to one stage has one colour in every
 * panel. The colours are those of Okabe and Ito, Color Universal Design (2008), chosen for colour-blind readers.
 */
final class LineStyle {
    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 20);
    static final Font TEXT = new Font(Font.SANS_SERIF, Font.PLAIN, 14);
    static final Color GRID = new Color(0xD8D8D8);

    private static final Color[] STAGES = {
        new Color(0x0072B2), new Color(0xD55E00), new Color(0x009E73), new Color(0xCC79A7), new Color(0x56B4E9)
    };
    private static final Color[] WHOLE = {
        Color.BLACK, new Color(0xE69F00), new Color(0x6B6B6B), new Color(0x56B4E9), new Color(0x8C6D1F)
    };
    private static final float[][] DASHES = {
        null, {12, 5}, {3, 4}, {14, 4, 3, 4}, {6, 3}, {18, 4, 3, 4, 3, 4}, {1, 3}, {24, 6}, {9, 3, 9, 6}, {3, 8}
    };
    private static final float WIDTH = 2.2f;
    private static final int SAMPLE_PX = 60;

    private final XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    private int whole;

    LineStyle() {
        renderer.setLegendLine(new Line2D.Double(-SAMPLE_PX / 2.0, 0, SAMPLE_PX / 2.0, 0));
        // One path for a whole line: drawn in pieces, a dash would begin anew at every point.
        renderer.setDrawSeriesLineAsPath(true);
    }

    /** The look of one more line. */
    void add(Column column, int index) {
        Color colour =
                column.stage() > 0 ? STAGES[(column.stage() - 1) % STAGES.length] : WHOLE[whole++ % WHOLE.length];
        renderer.setSeriesPaint(index, colour);
        float[] dash = DASHES[index % DASHES.length];
        renderer.setSeriesStroke(
                index, new BasicStroke(WIDTH, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dash, 0));
    }

    /** The colour of one line of many. */
    static Color colour(int index) {
        return STAGES[index % STAGES.length];
    }

    /** The dashes of one line of many, which tell it from others of its colour. */
    static BasicStroke stroke(int index, float width) {
        return new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES[index % DASHES.length], 0);
    }

    XYItemRenderer renderer() {
        return renderer;
    }

    static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setAutoRangeIncludesZero(false);
        axis.setLabelFont(TEXT);
        axis.setTickLabelFont(TEXT);
        return axis;
    }

    static LegendTitle legend(LegendItemSource lines) {
        LegendTitle legend = new LegendTitle(lines);
        legend.setItemFont(TEXT);
        legend.setPosition(RectangleEdge.RIGHT);
        legend.setHorizontalAlignment(HorizontalAlignment.LEFT);
        legend.setLegendItemGraphicPadding(new RectangleInsets(4, 10, 4, 6));
        legend.setBackgroundPaint(Color.WHITE);
        return legend;
    }
}
