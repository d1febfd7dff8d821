package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;

/** Paints the cursor over a chart, and beside the plot what each curve reads there. */
final class CursorPainter {
    private static final double DOT_EMS = 0.27;

    private final ChartPlan plan;
    private final ChartColors colors;
    private final Surface s;

    CursorPainter(ChartPlan plan, ChartColors colors, Surface surface) {
        this.plan = plan;
        this.colors = colors;
        s = surface;
    }

    /** Paints it at a place, SI; a place that is not a number is none. */
    void paint(double place) {
        if (!Double.isFinite(place)) {
            return;
        }
        Box plot = plan.plot();
        double em = s.lettering().size();
        double x = plan.x().px(place);
        boolean inView = x >= plot.left() - 0.5 && x <= plot.right() + 0.5;
        if (inView) {
            double sharp = Math.floor(x) + 0.5;
            s.line(
                    new double[] {sharp, sharp},
                    new double[] {plot.top(), plot.bottom()},
                    2,
                    new Surface.Pen(colors.ink(), 1.2));
            where(place, x);
        }
        for (ChartPlan.Entry entry : plan.entries()) {
            String words = entry.isBand() ? bandReading(entry, place) : reading(entry, place, x, inView);
            s.text(words, plan.width() - 0.3 * em, entry.y(), Surface.Align.RIGHT, true, colors.ink());
        }
    }

    private String reading(ChartPlan.Entry entry, double place, double x, boolean inView) {
        double si = plan.reading(plan.data().series().get(entry.index()), place);
        double y = plan.y().px(si);
        if (inView && plan.plot().holds(x, y)) {
            dot(x, y);
        }
        return ChartWords.value(si, plan.choice().yUnit());
    }

    private String bandReading(ChartPlan.Entry entry, double place) {
        Band band = plan.data().bands().get(entry.index());
        double low = Curve.at(band.x(), band.low(), place, plan.x(), plan.y());
        double high = Curve.at(band.x(), band.high(), place, plan.x(), plan.y());
        return ChartWords.range(low, high, plan.choice().yUnit());
    }

    private void dot(double x, double y) {
        double[] corners = Look.of(1).marker();
        int n = corners.length / 2;
        double radius = DOT_EMS * s.lettering().size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int k = 0; k < n; k++) {
            xs[k] = x + radius * corners[2 * k];
            ys[k] = y + radius * corners[2 * k + 1];
        }
        s.fill(xs, ys, n, colors.ink());
    }

    /** What the axis shows at the cursor, on a ground of its own over the numbers. */
    private void where(double place, double x) {
        Lettering lettering = s.lettering();
        String words = ChartWords.place(place, plan.data(), plan.choice().xUnit());
        double width = lettering.width(words, true);
        double half = width / 2 + 0.3 * lettering.size();
        double middle = Math.max(half, Math.min(plan.plot().right() - half, x));
        double top = plan.plot().bottom() + 0.33 * lettering.lineHeight();
        double y = plan.plot().bottom() + 0.75 * lettering.lineHeight();
        double bottom = y + 0.6 * lettering.lineHeight();
        double left = middle - half;
        double right = middle + half;
        // A number half covered could be read as another one.
        for (ChartPlan.Caption number : plan.xTicks()) {
            double reach = lettering.width(number.text(), false) / 2 + 1;
            if (!number.text().isEmpty() && number.x() + reach > middle - half && number.x() - reach < middle + half) {
                left = Math.min(left, number.x() - reach);
                right = Math.max(right, number.x() + reach);
            }
        }
        s.fill(new double[] {left, right, right, left}, new double[] {top, top, bottom, bottom}, 4, colors.paper());
        s.text(words, middle, y, Surface.Align.CENTER, true, colors.ink());
    }
}
