package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import javafx.scene.paint.Color;

/** Paints a laid out chart, all but the cursor, onto any surface. */
final class ChartPainter {
    private static final double MARKER_EMS = 0.3;
    /** From one marker of a curve to its next. */
    private static final double MARKERS_EMS = 9;

    private static final double HATCH_EMS = 0.8;
    private static final double VEIL = 0.82;

    private final ChartPlan plan;
    private final ChartColors colors;
    private final Surface s;
    private final Lettering lettering;
    private final double em;
    private final double unit;
    private final Box plot;

    ChartPainter(ChartPlan plan, ChartColors colors, Surface surface) {
        this.plan = plan;
        this.colors = colors;
        s = surface;
        lettering = surface.lettering();
        em = lettering.size();
        unit = Math.max(1, em / 13);
        plot = plan.plot();
    }

    /** Paints it. */
    void paint() {
        bands();
        grid();
        axes();
        flags();
        limits();
        for (int i = 0; i < plan.data().series().size(); i++) {
            curve(plan.data().series().get(i), i);
        }
        limitNames();
        spots();
        names();
    }

    private void bands() {
        for (Band band : plan.data().bands()) {
            s.begin(band.title());
            new BandPath(plan)
                    .draw(band, s, colors.shade(), new Surface.Pen(colors.muted(), 0.8 * unit, 2 * unit, 2 * unit));
            s.end();
        }
    }

    private void grid() {
        Surface.Pen faint = new Surface.Pen(colors.faint(), 1);
        Surface.Pen between = new Surface.Pen(colors.faint(), 0.4);
        for (Ticks.Tick tick : plan.yTicks()) {
            double y = sharp(plan.y().pxOfT(plan.y().tOfShown(tick.value())));
            segment(plot.left(), y, plot.right(), y, tick.text().isEmpty() ? between : faint);
            s.text(tick.text(), plot.left() - 0.5 * em, y, Surface.Align.RIGHT, false, colors.muted());
        }
        Surface.Pen stub = new Surface.Pen(colors.muted(), 1);
        for (ChartPlan.Caption tick : plan.xTicks()) {
            double x = sharp(tick.x());
            boolean isBetween = tick.text().isEmpty() && plan.x().logarithmic();
            segment(x, plot.top(), x, plot.bottom(), isBetween ? between : faint);
            segment(x, plot.bottom(), x, plot.bottom() + (tick.text().isEmpty() ? 0.15 : 0.3) * em, stub);
            s.text(tick.text(), tick.x(), tick.y(), Surface.Align.CENTER, false, colors.muted());
        }
    }

    private void axes() {
        Surface.Pen pen = new Surface.Pen(colors.muted(), unit);
        segment(sharp(plot.left()), plot.top(), sharp(plot.left()), plot.bottom(), pen);
        segment(plot.left(), sharp(plot.bottom()), plot.right(), sharp(plot.bottom()), pen);
        for (Stretch stretch : plan.data().x().stretches()) {
            double x = sharp(plan.x().px(stretch.fromX()));
            if (x > plot.left() + 1 && x < plot.right()) {
                segment(
                        x,
                        plot.top(),
                        x,
                        plot.bottom() + 2.2 * lettering.lineHeight(),
                        new Surface.Pen(colors.muted(), 1));
            }
        }
        for (ChartPlan.Caption name : plan.xNames()) {
            s.text(name.text(), name.x(), name.y(), Surface.Align.CENTER, false, colors.ink());
        }
        double y = plot.top() - lettering.lineHeight() * (lanes() + 0.8);
        String title = ChartWords.yTitle(plan.data(), plan.choice());
        s.text(title, plot.left(), y, Surface.Align.LEFT, false, colors.ink());
        unnamed(y, title);
    }

    /** Says that some events have no room for their names, where there is room for that at least. */
    private void unnamed(double y, String title) {
        long without = plan.unnamed();
        if (without == 0) {
            return;
        }
        String words = WindowText.say(
                "chart.marks-unnamed",
                Long.toString(without),
                Integer.toString(plan.flags().size()));
        double room = plot.width() - lettering.width(title, false) - em;
        if (lettering.width(words, false) <= room) {
            s.text(words, plot.right(), y, Surface.Align.RIGHT, false, colors.muted());
        }
    }

    private int lanes() {
        return plan.flags().stream().mapToInt(f -> f.place().lane() + 1).max().orElse(0);
    }

    private void flags() {
        double line = lettering.lineHeight();
        Surface.Pen stem = new Surface.Pen(colors.muted(), 1, 1.5 * unit, 2.5 * unit);
        for (ChartPlan.Flag flag : plan.flags()) {
            int lane = flag.place().lane();
            double x = sharp(flag.x());
            double head = plot.top() - (lane < 0 ? 0 : (lane + 0.9) * line);
            s.begin(flag.title());
            segment(x, head, x, plot.bottom(), stem);
            if (lane >= 0) {
                boolean toLeft = flag.place().toLeft();
                s.text(
                        flag.title(),
                        x + (toLeft ? -0.25 : 0.25) * em,
                        plot.top() - (lane + 0.5) * line,
                        toLeft ? Surface.Align.RIGHT : Surface.Align.LEFT,
                        false,
                        colors.muted());
            }
            s.end();
        }
    }

    private void limits() {
        for (int i = 0; i < plan.limits().size(); i++) {
            Limit limit = plan.data().limits().get(i);
            ChartPlan.Caption caption = plan.limits().get(i);
            double y = plan.y().px(limit.si());
            s.begin(caption.text());
            if (y >= plot.top() - 0.5 && y <= plot.bottom() + 0.5) {
                limitLine(sharp(y), limit.side() == Limit.Side.AT_MOST ? -1 : 1);
            }
            s.end();
        }
    }

    private void limitNames() {
        plan.limits().forEach(caption -> veiled(caption, true));
    }

    /** A line with hatching on the side where nothing may be. */
    private void limitLine(double y, int badSide) {
        segment(plot.left(), y, plot.right(), y, new Surface.Pen(colors.ink(), 1.3 * unit));
        Surface.Pen hatch = new Surface.Pen(colors.ink(), 0.8 * unit);
        double step = HATCH_EMS * em;
        for (double x = plot.left() + step / 2; x + step / 2 < plot.right(); x += step) {
            segment(x, y, x + 0.4 * step, y + badSide * 0.5 * step, hatch);
        }
    }

    private void curve(Series one, int index) {
        Look look = Look.of(index);
        s.begin(one.title());
        new CurvePath(plan).draw(one.x(), one.y(), s, pen(look));
        if (look.marker().length > 0) {
            double step = MARKERS_EMS * em;
            double first = step * (0.25 + 0.5 * (index % 3) / 3.0);
            for (double x = plot.left() + first; x <= plot.right(); x += step) {
                double y = plan.y().px(plan.reading(one, plan.x().si(x)));
                if (plot.holds(x, y)) {
                    marker(look, x, y);
                }
            }
        }
        s.end();
    }

    private Surface.Pen pen(Look look) {
        double[] dash = look.dash().clone();
        for (int i = 0; i < dash.length; i++) {
            dash[i] *= unit;
        }
        return new Surface.Pen(colors.ink(), look.width() * unit, dash);
    }

    private void marker(Look look, double x, double y) {
        shape(look.marker(), x, y, MARKER_EMS * em, look.filled() ? colors.ink() : colors.paper());
    }

    private void shape(double[] corners, double x, double y, double radius, Color fill) {
        int n = corners.length / 2;
        double[] xs = new double[n + 1];
        double[] ys = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            xs[k] = x + radius * corners[2 * (k % n)];
            ys[k] = y + radius * corners[2 * (k % n) + 1];
        }
        s.fill(xs, ys, n, fill);
        s.line(xs, ys, n + 1, new Surface.Pen(colors.ink(), 1.2 * unit));
    }

    private void spots() {
        int next = 0;
        for (Spot spot : plan.data().spots()) {
            double x = plan.x().px(spot.x());
            double y = plan.y().px(spot.y());
            if (plot.holds(x, y)) {
                s.begin(spot.title());
                Look ring = Look.of(1);
                shape(ring.marker(), x, y, 0.45 * em, colors.paper());
                shape(ring.marker(), x, y, 0.16 * em, colors.ink());
                veiled(plan.spots().get(next++), false);
                s.end();
            }
        }
    }

    private void veiled(ChartPlan.Caption caption, boolean strong) {
        if (caption.text().isEmpty()) {
            return;
        }
        double half = 0.45 * lettering.lineHeight();
        double width = lettering.width(caption.text(), false);
        Color veil = Color.color(
                colors.paper().getRed(),
                colors.paper().getGreen(),
                colors.paper().getBlue(),
                VEIL);
        double x = caption.x();
        double y = caption.y();
        s.fill(
                new double[] {x - 2, x + width + 2, x + width + 2, x - 2},
                new double[] {y - half, y - half, y + half, y + half},
                4,
                veil);
        s.text(caption.text(), x, y, Surface.Align.LEFT, false, strong ? colors.ink() : colors.muted());
    }

    /** The names beside the plot, each led to by a piece of its own line. */
    private void names() {
        for (ChartPlan.Entry entry : plan.entries()) {
            double to = plan.namesX() - 0.4 * em;
            double from = plot.right() + 0.15 * em;
            double[] xs = {from, from + 0.5 * em, to};
            double[] ys = {entry.endY(), entry.y(), entry.y()};
            if (entry.endX() < plot.right() - 1) {
                segment(
                        entry.endX(),
                        entry.endY(),
                        plot.right(),
                        entry.endY(),
                        new Surface.Pen(colors.muted(), 0.6, 1, 3));
            }
            if (entry.isBand()) {
                double half = 0.35 * em;
                s.fill(
                        new double[] {from + 0.5 * em, to, to, from + 0.5 * em},
                        new double[] {entry.y() - half, entry.y() - half, entry.y() + half, entry.y() + half},
                        4,
                        colors.shade());
            } else {
                Look look = Look.of(entry.index());
                s.line(xs, ys, 3, pen(look));
                if (look.marker().length > 0) {
                    marker(look, (from + 0.5 * em + to) / 2, entry.y());
                }
            }
            s.text(entry.title(), plan.namesX(), entry.y(), Surface.Align.LEFT, false, colors.ink());
        }
    }

    private void segment(double x1, double y1, double x2, double y2, Surface.Pen pen) {
        s.line(new double[] {x1, x2}, new double[] {y1, y2}, 2, pen);
    }

    private static double sharp(double px) {
        return Math.floor(px) + 0.5;
    }
}
