package boilwright.report;

import boilwright.spread.Band;
import boilwright.spread.EventSpread;
import boilwright.spread.MarginSpread;
import boilwright.spread.Percent;
import boilwright.spread.SpreadAnswer;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.CategoryLabelPositions;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.DatasetRenderingOrder;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.renderer.category.IntervalBarRenderer;
import org.jfree.chart.renderer.category.LineAndShapeRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.category.DefaultIntervalCategoryDataset;

/**
 * How far margins and times spread, as a picture: a bar from 10 to 90 % with the median as a dot, for the ratio of each margin with the limit as a
 * line, and below for the time of each event. Drawn without a screen.
 */
public final class SpreadPicture {
    private static final int WIDTH = 1400;
    private static final int ROW_PX = 34;
    private static final int FRAME_PX = 130;
    private static final double LEAST_RATIO = 0.1;
    private static final double MOST_RATIO = 10;
    private static final double MINUTE_S = 60;
    private static final double AXIS_BEYOND = 1.05;
    private static final Color BAR = new Color(0x9CC3E0);
    private static final Color LIMIT = new Color(0xB03000);

    private SpreadPicture() {}

    /** The picture as a PNG file's content. */
    public static byte[] png(SpreadAnswer answer) {
        List<MarginSpread> margins =
                answer.margins().stream().filter(SpreadText::isShown).toList();
        List<EventSpread> events = answer.events().stream()
                .filter(event -> event.band().timeS().low().isPresent())
                .toList();
        int above = FRAME_PX + ROW_PX * margins.size();
        int below = events.isEmpty() ? 0 : FRAME_PX + ROW_PX * events.size();
        BufferedImage image = new BufferedImage(WIDTH, above + below, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            margins(answer, margins).draw(graphics, new Rectangle(0, 0, WIDTH, above));
            if (below > 0) {
                events(answer, events).draw(graphics, new Rectangle(0, above, WIDTH, below));
            }
        } finally {
            graphics.dispose();
        }
        return Png.of(image);
    }

    private static JFreeChart margins(SpreadAnswer answer, List<MarginSpread> margins) {
        String[] names = margins.stream()
                .map(m -> m.title() + ", fails in "
                        + Percent.of(m.band().failing().share()))
                .toArray(String[]::new);
        double[][] ends = new double[3][margins.size()];
        for (int i = 0; i < margins.size(); i++) {
            Band ratio = margins.get(i).band().ratio();
            ends[0][i] = shown(ratio.low().orElseThrow());
            ends[1][i] = shown(ratio.median().orElseThrow());
            ends[2][i] = shown(ratio.high().orElseThrow());
        }
        LogAxis axis = new LogAxis("Ratio to the limit: 1 is at the limit, below it fails (ends at " + LEAST_RATIO
                + " and " + (int) MOST_RATIO + ")");
        axis.setBase(MOST_RATIO);
        axis.setRange(LEAST_RATIO / AXIS_BEYOND, MOST_RATIO * AXIS_BEYOND);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(
                new java.text.DecimalFormat("0.##", java.text.DecimalFormatSymbols.getInstance(java.util.Locale.ROOT)));
        CategoryPlot plot = plot(names, ends, axis);
        plot.addRangeMarker(new ValueMarker(1, LIMIT, new BasicStroke(2.5f)));
        return chart(answer.rig().name() + ": margins of " + answer.accepted() + " samples, 10 to 90 %", plot);
    }

    private static JFreeChart events(SpreadAnswer answer, List<EventSpread> events) {
        double latest = events.stream()
                .mapToDouble(e -> e.band()
                        .timeS()
                        .high()
                        .orElse(e.band()
                                .timeS()
                                .median()
                                .orElse(e.band().timeS().low().orElseThrow())))
                .max()
                .orElse(MINUTE_S);
        double end = AXIS_BEYOND * Math.max(1, latest / MINUTE_S);
        String[] names = events.stream()
                .map(e -> SpreadText.title(e)
                        + (e.band().never().cases() > 0
                                ? ", never in " + Percent.of(e.band().never().share())
                                : ""))
                .toArray(String[]::new);
        double[][] ends = new double[3][events.size()];
        for (int i = 0; i < events.size(); i++) {
            Band time = events.get(i).band().timeS();
            ends[0][i] = time.low().orElseThrow() / MINUTE_S;
            // what never comes lies beyond the end of the axis
            ends[1][i] = time.median().orElse(2 * end * MINUTE_S) / MINUTE_S;
            ends[2][i] = time.high().orElse(end * MINUTE_S) / MINUTE_S;
        }
        NumberAxis axis = LineStyle.axis(
                "Time after pumping the foreline down, minutes; a bar to the edge: never in more than a tenth");
        axis.setRange(0, end);
        return chart(answer.rig().name() + ": warm-up, 10 to 90 %", plot(names, ends, axis));
    }

    private static double shown(double ratio) {
        return Math.max(LEAST_RATIO, Math.min(MOST_RATIO, ratio));
    }

    private static CategoryPlot plot(String[] names, double[][] ends, ValueAxis axis) {
        DefaultCategoryDataset medians = new DefaultCategoryDataset();
        for (int i = 0; i < names.length; i++) {
            medians.addValue(ends[1][i], "median", names[i]);
        }
        IntervalBarRenderer bars = new IntervalBarRenderer();
        bars.setBarPainter(new StandardBarPainter());
        bars.setShadowVisible(false);
        bars.setSeriesPaint(0, BAR);
        bars.setMinimumBarLength(3);
        LineAndShapeRenderer dots = new LineAndShapeRenderer(false, true);
        dots.setSeriesPaint(0, Color.BLACK);
        dots.setSeriesShape(0, new Ellipse2D.Double(-5, -5, 10, 10));
        CategoryAxis rows = new CategoryAxis();
        rows.setTickLabelFont(LineStyle.TEXT);
        rows.setMaximumCategoryLabelWidthRatio(0.45f);
        rows.setCategoryLabelPositions(CategoryLabelPositions.STANDARD);
        CategoryPlot plot = new CategoryPlot(
                new DefaultIntervalCategoryDataset(
                        new Comparable<?>[] {"10 to 90 %"}, names, boxed(ends[0]), boxed(ends[2])),
                rows,
                axis,
                bars);
        plot.setOrientation(PlotOrientation.HORIZONTAL);
        plot.setDataset(1, medians);
        plot.setRenderer(1, dots);
        plot.setDatasetRenderingOrder(DatasetRenderingOrder.FORWARD);
        plot.setBackgroundPaint(Color.WHITE);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        axis.setLabelFont(LineStyle.TEXT);
        axis.setTickLabelFont(LineStyle.TEXT);
        return plot;
    }

    private static Number[][] boxed(double[] values) {
        Number[][] row = new Number[1][values.length];
        for (int i = 0; i < values.length; i++) {
            row[0][i] = values[i];
        }
        return row;
    }

    private static JFreeChart chart(String title, CategoryPlot plot) {
        JFreeChart chart = new JFreeChart(title, LineStyle.TITLE, plot, false);
        chart.setBackgroundPaint(Color.WHITE);
        return chart;
    }
}
