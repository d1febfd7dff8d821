package boilwright.report;

import boilwright.thermal.RunResult;
import boilwright.thermal.TimeEvent;
import boilwright.thermal.TimeSeries.Column;
import boilwright.thermal.TimeSeries.Kind;
import boilwright.units.PhysicalConstants;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CombinedDomainXYPlot;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * A run as a picture: temperatures above, jet flows below, each event as a numbered line through both and in words under
 * them. Drawn without a screen.
 */
public final class RunPicture {
    /** Width of the picture, pixels. */
    public static final int WIDTH = 1400;
    /** Height of the picture, pixels. */
    public static final int HEIGHT = 1000;

    private static final double KG_PER_S_IN_G_PER_H = 3.6e6;
    private static final int LONG_RUN_S = 3 * 3600;
    private static final int TEMPERATURE_WEIGHT = 3;
    private static final int FLOW_WEIGHT = 2;

    private RunPicture() {}

    /**
     * The picture as a PNG file's content.
     *
     * @param rig name of the rig, for the title
     * @param run the run to draw
     */
    public static byte[] png(String rig, RunResult run) {
        BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            draw(graphics, rig, run);
        } finally {
            graphics.dispose();
        }
        return Png.of(image);
    }

    /** Whether this machine has what drawing text takes: a font and the library that finds it. */
    public static boolean canDraw() {
        BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            return graphics.getFontMetrics(LineStyle.TEXT).stringWidth("m") > 0;
        } catch (LinkageError | RuntimeException | InternalError e) {
            return false;
        } finally {
            graphics.dispose();
        }
    }

    private static void draw(Graphics2D graphics, String rig, RunResult run) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        graphics.setColor(Color.WHITE);
        graphics.fillRect(0, 0, WIDTH, HEIGHT);
        EventMarks marks = EventMarks.of(run.events(), lastTime(run));
        int under = marks.heightPx();
        chart(rig, run, marks).draw(graphics, new Rectangle(0, 0, WIDTH, HEIGHT - under));
        marks.writeWords(graphics, HEIGHT - under, WIDTH);
    }

    private static JFreeChart chart(String rig, RunResult run, EventMarks marks) {
        boolean inHours = lastTime(run) > LONG_RUN_S;
        double unit = inHours ? 3600 : 60;
        String zero = run.kind().equals("cooldown") ? "heat off" : "pumping the foreline down";
        NumberAxis time = LineStyle.axis("Time after " + zero + (inHours ? ", hours" : ", minutes"));
        time.setLowerMargin(0.01);
        time.setUpperMargin(0.01);
        CombinedDomainXYPlot both = new CombinedDomainXYPlot(time);
        both.setGap(14);
        XYPlot temperatures = panel(
                run,
                Kind.TEMPERATURE,
                "Temperature, degC",
                unit,
                kelvin -> kelvin - PhysicalConstants.ZERO_CELSIUS_K,
                marks);
        XYPlot flows = panel(run, Kind.FLOW, "Vapour flow, g/h", unit, flow -> flow * KG_PER_S_IN_G_PER_H, marks);
        marks.number(temperatures, unit);
        both.add(temperatures, TEMPERATURE_WEIGHT);
        both.add(flows, FLOW_WEIGHT);
        String what = run.kind().equals("cooldown") ? "cool-down" : "warm-up";
        JFreeChart chart = new JFreeChart(rig + ": " + what, LineStyle.TITLE, both, false);
        chart.setBackgroundPaint(Color.WHITE);
        chart.addSubtitle(LineStyle.legend(both));
        return chart;
    }

    private static XYPlot panel(
            RunResult run, Kind kind, String label, double timeUnit, DoubleUnaryOperator shown, EventMarks marks) {
        double[] times = run.series().columns().get(0).values();
        List<Column> columns =
                run.series().columns().stream().filter(c -> c.kind() == kind).toList();
        DefaultXYDataset data = new DefaultXYDataset();
        LineStyle style = new LineStyle();
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            double[][] points = new double[2][times.length];
            for (int j = 0; j < times.length; j++) {
                points[0][j] = times[j] / timeUnit;
                points[1][j] = shown.applyAsDouble(column.values()[j]);
            }
            data.addSeries(column.title(), points);
            style.add(column, i);
        }
        XYPlot plot = new XYPlot(data, null, LineStyle.axis(label), style.renderer());
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(LineStyle.GRID);
        plot.setRangeGridlinePaint(LineStyle.GRID);
        marks.line(plot, timeUnit);
        return plot;
    }

    private static double lastTime(RunResult run) {
        double[] times = run.series().columns().get(0).values();
        return times[times.length - 1];
    }

    /** The events of a run as numbered lines in a picture, and the list that says what the numbers mean. */
    private static final class EventMarks {
        private static final Font NUMBER = new Font(Font.SANS_SERIF, Font.BOLD, 13);
        private static final Color INK = new Color(0x404040);
        private static final BasicStroke LINE =
                new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_BEVEL, 1, new float[] {2, 3}, 0);
        private static final int COLUMNS = 3;
        private static final int ROW_PX = 20;
        private static final int MARGIN_PX = 24;
        /** Numbers nearer than this share of the axis would be printed over each other. */
        private static final double LEAST_GAP = 0.022;

        private final List<TimeEvent> happened;
        private final List<TimeEvent> missing;
        private final double gapS;

        private EventMarks(List<TimeEvent> happened, List<TimeEvent> missing, double gapS) {
            this.happened = happened;
            this.missing = missing;
            this.gapS = gapS;
        }

        /** Marks for events along an axis that ends at a time, s. */
        static EventMarks of(List<TimeEvent> events, double endS) {
            List<TimeEvent> happened =
                    events.stream().filter(e -> e.timeS().isPresent()).toList();
            List<TimeEvent> missing =
                    events.stream().filter(e -> e.timeS().isEmpty()).toList();
            return new EventMarks(happened, missing, endS * LEAST_GAP);
        }

        /** Space that the words need, pixels. */
        int heightPx() {
            int entries = happened.size() + missing.size();
            return (entries + COLUMNS - 1) / COLUMNS * ROW_PX + MARGIN_PX;
        }

        /** A line at each event. */
        void line(XYPlot plot, double timeUnit) {
            for (TimeEvent event : happened) {
                plot.addDomainMarker(marker(event.timeS().getAsDouble() / timeUnit));
            }
        }

        /** The numbers at the top of the lines; those of events close together stand as one. */
        void number(XYPlot plot, double timeUnit) {
            int first = 0;
            while (first < happened.size()) {
                double start = happened.get(first).timeS().getAsDouble();
                int last = first;
                while (last + 1 < happened.size()
                        && happened.get(last + 1).timeS().getAsDouble() - start < gapS) {
                    last++;
                }
                ValueMarker number = marker(start / timeUnit);
                number.setLabel(first == last ? "" + (first + 1) : (first + 1) + "-" + (last + 1));
                number.setLabelFont(NUMBER);
                number.setLabelPaint(INK);
                number.setLabelAnchor(RectangleAnchor.TOP_RIGHT);
                number.setLabelTextAnchor(TextAnchor.TOP_LEFT);
                number.setLabelBackgroundColor(Color.WHITE);
                plot.addDomainMarker(number);
                first = last + 1;
            }
        }

        /** What the numbers mean, in columns from a height downwards. */
        void writeWords(Graphics2D graphics, int top, int width) {
            List<String> words = new ArrayList<>();
            for (TimeEvent event : happened) {
                words.add((words.size() + 1) + "  "
                        + EventWords.clock(event.timeS().getAsDouble()) + "  " + EventWords.title(event));
            }
            missing.forEach(event -> words.add("-  never  " + EventWords.title(event)));
            graphics.setFont(LineStyle.TEXT);
            graphics.setColor(INK);
            FontMetrics metrics = graphics.getFontMetrics();
            int rows = (words.size() + COLUMNS - 1) / COLUMNS;
            int columnWidth = (width - 2 * MARGIN_PX) / COLUMNS;
            for (int i = 0; i < words.size(); i++) {
                int x = MARGIN_PX + i / rows * columnWidth;
                int y = top + i % rows * ROW_PX + metrics.getAscent() + MARGIN_PX / 4;
                graphics.drawString(fitted(words.get(i), metrics, columnWidth - MARGIN_PX), x, y);
            }
        }

        private static String fitted(String text, FontMetrics metrics, int width) {
            if (metrics.stringWidth(text) <= width) {
                return text;
            }
            String shorter = text;
            while (!shorter.isEmpty() && metrics.stringWidth(shorter + "...") > width) {
                shorter = shorter.substring(0, shorter.length() - 1);
            }
            return shorter + "...";
        }

        private static ValueMarker marker(double value) {
            return new ValueMarker(value, INK, LINE);
        }
    }
}
