package boilwright.report;

import boilwright.thermal.TimeEvent;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.TextAnchor;

/** The events of a run as numbered lines in a picture, and the list that says what the numbers mean. */
final class EventMarks {
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
            while (last + 1 < happened.size() && happened.get(last + 1).timeS().getAsDouble() - start < gapS) {
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
            words.add((words.size() + 1) + "  " + EventWords.clock(event.timeS().getAsDouble()) + "  "
                    + EventWords.title(event));
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
