package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import java.util.ArrayList;
import java.util.List;

/** Where the numbers and names of the axes stand. */
final class AxisPlan {
    /** Height of a step of the y axis, in lines of text, at least. */
    private static final double Y_STEP = 1.7;

    private static final double GAP_EMS = 1.4;

    private AxisPlan() {}

    /** Ticks upwards for a plot of some height. */
    static List<Ticks.Tick> y(Scale scale, double height, double lineHeight) {
        int most = Math.max(2, (int) (height / (Y_STEP * lineHeight)));
        double low = scale.shownOfT(scale.lowT());
        double high = scale.shownOfT(scale.highT());
        return scale.logarithmic() ? Ticks.logarithmic(low, high, most) : Ticks.linear(low, high, most);
    }

    /** Numbers to the right, with their places; those without room for their text have none. */
    static List<ChartPlan.Caption> x(ChartData data, Scale scale, double y, Lettering lettering) {
        double gap = GAP_EMS * lettering.size();
        List<ChartPlan.Caption> all = new ArrayList<>();
        if (data.x().isTime()) {
            clock(data, scale, y, lettering, gap, all);
        } else {
            double low = scale.shownOfT(scale.lowT());
            double high = scale.shownOfT(scale.highT());
            int most = (int) Math.max(2, (scale.highPx() - scale.lowPx()) / (6 * lettering.size()));
            List<Ticks.Tick> ticks =
                    scale.logarithmic() ? Ticks.logarithmic(low, high, most) : Ticks.linear(low, high, most);
            for (Ticks.Tick tick : ticks) {
                all.add(new ChartPlan.Caption(tick.text(), scale.pxOfT(scale.tOfShown(tick.value())), y));
            }
        }
        return withRoom(all, lettering, gap / 2);
    }

    private static void clock(
            ChartData data, Scale scale, double y, Lettering lettering, double gap, List<ChartPlan.Caption> all) {
        double low = scale.ofT(scale.lowT());
        double high = scale.ofT(scale.highT());
        double perPx = (high - low) / (scale.highPx() - scale.lowPx());
        long step = Ticks.clockStep(perPx * (lettering.width(Ticks.clock(high), false) + gap));
        if (data.x().stretches().isEmpty()) {
            for (Ticks.Tick tick : Ticks.clock(low, high, step)) {
                all.add(new ChartPlan.Caption(tick.text(), scale.px(tick.value()), y));
            }
        }
        for (Stretch stretch : data.x().stretches()) {
            double from = Math.max(low, stretch.fromX());
            double to = Math.min(high, stretch.toX());
            if (stretch.ticking() && to > from) {
                for (Ticks.Tick tick : Ticks.clock(from - stretch.fromX(), to - stretch.fromX(), step)) {
                    all.add(new ChartPlan.Caption(tick.text(), scale.px(stretch.fromX() + tick.value()), y));
                }
            }
        }
    }

    private static List<ChartPlan.Caption> withRoom(List<ChartPlan.Caption> all, Lettering lettering, double gap) {
        List<ChartPlan.Caption> kept = new ArrayList<>();
        double taken = Double.NEGATIVE_INFINITY;
        for (ChartPlan.Caption one : all) {
            double half = lettering.width(one.text(), false) / 2;
            if (one.text().isEmpty() || one.x() - half < taken + gap) {
                kept.add(new ChartPlan.Caption("", one.x(), one.y()));
            } else {
                kept.add(one);
                taken = one.x() + half;
            }
        }
        return kept;
    }

    /** The name of the axis, or the names of its parts, below the numbers. */
    static List<ChartPlan.Caption> names(ChartData data, Choice choice, Scale scale, double y, Lettering lettering) {
        if (data.x().stretches().isEmpty()) {
            double middle = (scale.lowPx() + scale.highPx()) / 2;
            return List.of(new ChartPlan.Caption(ChartWords.xTitle(data, choice), middle, y));
        }
        List<ChartPlan.Caption> names = new ArrayList<>();
        for (Stretch stretch : data.x().stretches()) {
            double from = Math.max(scale.lowPx(), scale.px(stretch.fromX()));
            double to = Math.min(scale.highPx(), scale.px(stretch.toX()));
            String full = stretch.ticking() ? WindowText.say("chart.axis.time", stretch.title()) : stretch.title();
            String text = lettering.width(full, false) <= to - from ? full : stretch.title();
            // A name cut short would say less than none; the cursor says where it stands.
            if (lettering.width(text, false) <= to - from) {
                names.add(new ChartPlan.Caption(text, (from + to) / 2, y));
            }
        }
        return names;
    }
}
