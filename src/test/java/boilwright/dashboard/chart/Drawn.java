package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;

/** A surface that only remembers what was painted on it. */
final class Drawn implements Surface {
    record Line(String part, double[] xs, double[] ys, Surface.Pen pen) {}

    record Words(String text, Box box) {}

    final List<Line> lines = new ArrayList<>();
    final List<Words> words = new ArrayList<>();
    private final Lettering lettering = new Lettering(Font.font("System", 13));
    private final List<String> parts = new ArrayList<>();

    /** Paints a chart of this size. */
    static Drawn of(ChartPlan plan) {
        Drawn drawn = new Drawn();
        new ChartPainter(plan, ChartColors.PRINTED, drawn).paint();
        return drawn;
    }

    static ChartPlan plan(ChartData data, Choice choice, View view, double width, double height) {
        return ChartPlan.of(data, choice, view, width, height, 0, new Lettering(Font.font("System", 13)));
    }

    /** The lines that were drawn as part of a curve with this title, without its markers. */
    List<Line> curve(String title) {
        double width = lines.stream()
                .filter(line -> line.part().equals(title))
                .findFirst()
                .map(line -> line.pen().width())
                .orElse(0.0);
        return lines.stream()
                .filter(line -> line.part().equals(title) && line.pen().width() == width)
                .toList();
    }

    @Override
    public Lettering lettering() {
        return lettering;
    }

    @Override
    public void begin(String title) {
        parts.add(title);
    }

    @Override
    public void end() {
        parts.remove(parts.size() - 1);
    }

    @Override
    public void text(String text, double x, double middleY, Align align, boolean bold, Color color) {
        if (!text.isEmpty()) {
            double width = lettering.width(text, bold);
            double left = x
                    - switch (align) {
                        case LEFT -> 0;
                        case CENTER -> width / 2;
                        case RIGHT -> width;
                    };
            double half = lettering.size() / 2;
            words.add(new Words(text, new Box(left, middleY - half, left + width, middleY + half)));
        }
    }

    @Override
    public void line(double[] xs, double[] ys, int count, Surface.Pen pen) {
        String part = parts.isEmpty() ? "" : parts.get(parts.size() - 1);
        lines.add(new Line(part, Arrays.copyOf(xs, count), Arrays.copyOf(ys, count), pen));
    }

    @Override
    public void fill(double[] xs, double[] ys, int count, Color color) {
        // Shapes are of no interest to the tests.
    }
}
