package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import java.util.ArrayList;
import java.util.List;

/**
 * Where everything in a picture of a chart stands: made once for data, choice, view and size, then painted, read and pointed at.
 *
 * @param data what is shown
 * @param choice how it is read
 * @param width of the picture, px
 * @param height of the picture, px
 * @param plot the part within the axes
 * @param x scale to the right
 * @param y scale upwards
 * @param yTicks lines of the grid upwards, in the unit shown
 * @param xTicks numbers to the right
 * @param xNames names below them
 * @param flags the events in view
 * @param limits names of the limits, in their order
 * @param entries names beside the plot
 * @param spots names of the marked points in view
 * @param namesX where the names beside the plot begin, px
 */
record ChartPlan(
        ChartData data,
        Choice choice,
        double width,
        double height,
        Box plot,
        Scale x,
        Scale y,
        List<Ticks.Tick> yTicks,
        List<Caption> xTicks,
        List<Caption> xNames,
        List<Flag> flags,
        List<Caption> limits,
        List<Entry> entries,
        List<Caption> spots,
        double namesX) {
    private static final double MOST_BESIDE = 0.42;
    /** Charts below each other have their axes in line as long as their names and numbers are of the usual length. */
    private static final double LEFT_EMS = 3;

    private static final double NAME_EMS = 6.5;
    private static final double READING_EMS = 6.2;
    private static final double LEADER_EMS = 2.2;
    private static final double LEAST_PLOT = 20;
    private static final double LANES_SHARE = 0.22;
    private static final int MOST_LANES = 5;

    /**
     * Lays a picture out.
     *
     * @param headPx height kept free at the top, for a title
     */
    static ChartPlan of(
            ChartData data, Choice choice, View view, double width, double height, double headPx, Lettering lettering) {
        double line = lettering.lineHeight();
        double em = lettering.size();
        Scale x = inView(Extent.x(data, choice.xScale()), view.xLow(), view.xHigh());
        Scale y = inView(Extent.y(data, choice.yScale()), view.yLow(), view.yHigh());
        int lanes = Math.max(1, Math.min(MOST_LANES, (int) (LANES_SHARE * (height - headPx) / line)));
        double bottom = height - 2.3 * line;
        double top = headPx + line;
        double fewest = bottom - top - (data.marks().isEmpty() ? 0 : lanes * line);
        List<Ticks.Tick> yTicks = AxisPlan.y(y, Math.max(LEAST_PLOT, fewest), line);
        double left = left(data, yTicks, lettering);
        double reading = Math.max(READING_EMS * em, readingWidth(false, y, lettering));
        double pair = data.bands().isEmpty() ? 0 : readingWidth(true, y, lettering);
        double names = widest(data.series().stream().map(Series::title).toList(), lettering);
        double bands = widest(data.bands().stream().map(Band::title).toList(), lettering);
        double words = Math.max(Math.max(NAME_EMS * em, names) + reading, bands + pair);
        double beside = Math.min(MOST_BESIDE * width, LEADER_EMS * em + words + 0.7 * em);
        double right = Math.max(left + LEAST_PLOT, width - beside - 0.5 * em);
        x = x.onto(left, right);
        List<Flag> flags = flags(data, x, lanes, lettering);
        int used = flags.stream().mapToInt(f -> f.place().lane() + 1).max().orElse(0);
        top = Math.min(bottom - LEAST_PLOT, top + used * line + 0.3 * line);
        Box plot = new Box(left, top, right, bottom);
        y = y.onto(bottom, top);
        double namesX = right + LEADER_EMS * em;
        return new ChartPlan(
                data,
                choice,
                width,
                height,
                plot,
                x,
                y,
                yTicks,
                AxisPlan.x(data, x, bottom + 0.75 * line, lettering),
                AxisPlan.names(data, choice, x, bottom + 1.75 * line, lettering),
                flags,
                LimitPlan.of(data, choice, plot, x, y, lettering),
                entries(data, plot, x, y, width - 0.7 * em - namesX, new double[] {reading, pair}, lettering),
                SpotPlan.of(data, plot, x, y, lettering),
                namesX);
    }

    private static Scale inView(Scale all, double low, double high) {
        double lowT = Double.isNaN(low) ? all.lowT() : all.t(low);
        double highT = Double.isNaN(high) ? all.highT() : all.t(high);
        // The data may have become shorter since the view was chosen.
        lowT = Double.isNaN(low) ? lowT : Math.max(lowT, Math.min(all.lowT(), highT));
        highT = Double.isNaN(high) ? highT : Math.min(highT, Math.max(all.highT(), lowT));
        return Double.isFinite(lowT) && Double.isFinite(highT) && highT > lowT ? all.from(lowT, highT) : all;
    }

    private static double left(ChartData data, List<Ticks.Tick> yTicks, Lettering lettering) {
        double numbers = yTicks.stream()
                .mapToDouble(t -> lettering.width(t.text(), false))
                .max()
                .orElse(0);
        double firstClock = data.x().isTime() ? 0.6 * lettering.width(Ticks.clock(0), false) : 0;
        return Math.max(LEFT_EMS * lettering.size(), Math.max(firstClock, numbers + 0.9 * lettering.size()));
    }

    private static double readingWidth(boolean pairs, Scale y, Lettering lettering) {
        double widest = 0;
        for (double share : new double[] {0, 0.37, 1}) {
            double si = y.ofT(y.lowT() + share * (y.highT() - y.lowT()));
            String words = pairs ? ChartWords.range(si, si, y.unit()) : ChartWords.value(si, y.unit());
            widest = Math.max(widest, lettering.width(words, true));
        }
        return widest + lettering.size() / 2;
    }

    private static double widest(List<String> texts, Lettering lettering) {
        return texts.stream().mapToDouble(t -> lettering.width(t, false)).max().orElse(0);
    }

    private static List<Flag> flags(ChartData data, Scale x, int lanes, Lettering lettering) {
        int n = data.marks().size();
        double[] at = new double[n];
        double[] widths = new double[n];
        for (int i = 0; i < n; i++) {
            at[i] = x.px(data.marks().get(i).x());
            widths[i] = lettering.width(data.marks().get(i).title(), false);
        }
        MarkLanes.Place[] places =
                MarkLanes.place(at, widths, lanes, x.lowPx() - 0.5, x.highPx() + 0.5, 0.6 * lettering.size());
        List<Flag> flags = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            if (at[i] >= x.lowPx() - 0.5 && at[i] <= x.highPx() + 0.5) {
                flags.add(new Flag(data.marks().get(i).title(), at[i], places[i]));
            }
        }
        return flags;
    }

    private static List<Entry> entries(
            ChartData data, Box plot, Scale x, Scale y, double room, double[] readings, Lettering lettering) {
        List<Entry> found = new ArrayList<>();
        for (int i = 0; i < data.series().size(); i++) {
            Series one = data.series().get(i);
            add(found, one.title(), i, false, end(one.x(), one.y(), x, y), x, plot);
        }
        for (int i = 0; i < data.bands().size(); i++) {
            Band band = data.bands().get(i);
            double[] low = end(band.x(), band.low(), x, y);
            double[] high = end(band.x(), band.high(), x, y);
            double[] middle = {low[0], (low[1] + high[1]) / 2};
            add(found, band.title(), i, true, middle, x, plot);
        }
        double[] wanted = found.stream().mapToDouble(Entry::endY).toArray();
        double pitch = lettering.lineHeight();
        double[] places = LabelSpread.apart(wanted, pitch, plot.top() - pitch / 2, plot.bottom() + pitch / 2);
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            Entry e = found.get(i);
            double left = room - readings[e.isBand() ? 1 : 0];
            String title = lettering.fitted(e.title(), false, Math.max(0, left));
            entries.add(new Entry(title, e.index(), e.isBand(), e.endX(), e.endY(), places[i]));
        }
        return entries;
    }

    private static void add(
            List<Entry> found, String title, int index, boolean isBand, double[] end, Scale x, Box plot) {
        if (Double.isNaN(end[1])) {
            return;
        }
        double px = Math.min(plot.right(), x.pxOfT(end[0]));
        double py = Math.max(plot.top(), Math.min(plot.bottom(), end[1]));
        found.add(new Entry(title, index, isBand, px, py, py));
    }

    /** The last place where a curve has a value, within the plot if there is any: place on its scale and px; NaN for none. */
    private static double[] end(double[] xs, double[] ys, Scale x, Scale y) {
        double edge = x.ofT(x.highT());
        double atEdge = Curve.at(xs, ys, edge, x, y);
        double[] outOfView = {Double.NaN, Double.NaN};
        if (Double.isFinite(y.t(atEdge))) {
            outOfView = new double[] {x.highT(), y.px(atEdge)};
            if (isInView(y, y.t(atEdge))) {
                return outOfView;
            }
        }
        for (int i = Curve.before(xs, edge); i >= 0; i--) {
            if (x.t(xs[i]) < x.lowT()) {
                break;
            }
            if (Double.isFinite(y.t(ys[i])) && Double.isFinite(x.t(xs[i]))) {
                double[] here = {x.t(xs[i]), y.px(ys[i])};
                if (isInView(y, y.t(ys[i]))) {
                    return here;
                }
                outOfView = Double.isNaN(outOfView[1]) ? here : outOfView;
            }
        }
        return outOfView;
    }

    private static boolean isInView(Scale y, double t) {
        return t >= y.lowT() && t <= y.highT();
    }

    /** How many events in view have no room for their names. */
    long unnamed() {
        return flags.stream().filter(f -> f.place().lane() < 0).count();
    }

    /** The SI value of a curve at a place; NaN where it has none. */
    double reading(Series one, double place) {
        return Curve.at(one.x(), one.y(), place, x, y);
    }

    /**
     * One name beside the plot.
     *
     * @param title the name, as long as there is room
     * @param index number of the curve or of the band
     * @param isBand whether it names a band
     * @param endX where the curve ends in view, px
     * @param endY height of its end, px
     * @param y middle of the name, px
     */
    record Entry(String title, int index, boolean isBand, double endX, double endY, double y) {}

    /**
     * One event in the picture.
     *
     * @param title its name
     * @param x px
     * @param place where its name stands
     */
    record Flag(String title, double x, MarkLanes.Place place) {}

    /**
     * A text in the picture.
     *
     * @param text the words
     * @param x where they begin, are centred or end, px
     * @param y their middle, px
     */
    record Caption(String text, double x, double y) {}
}
