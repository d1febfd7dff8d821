package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import boilwright.dashboard.text.WindowText;
import java.util.ArrayList;
import java.util.List;

/** Names of limits: each along its line, above or below it, where the fewest curves and names are in the way. */
final class LimitPlan {
    private static final int SPOTS = 12;
    private static final double OFF = 0.62;
    /** A name across another name is worse than one across any number of curves. */
    private static final int NAME = 1000;

    private final ChartData data;
    private final Box plot;
    private final Scale x;
    private final Scale y;
    private final double line;
    private final List<Box> taken = new ArrayList<>();

    private LimitPlan(ChartData data, Box plot, Scale x, Scale y, double line) {
        this.data = data;
        this.plot = plot;
        this.x = x;
        this.y = y;
        this.line = line;
    }

    /** The names, in the order of the limits. One out of view is named at the edge beyond which it lies. */
    static List<ChartPlan.Caption> of(ChartData data, Choice choice, Box plot, Scale x, Scale y, Lettering lettering) {
        LimitPlan plan = new LimitPlan(data, plot, x, y, lettering.lineHeight());
        List<ChartPlan.Caption> captions = new ArrayList<>();
        for (Limit limit : data.limits()) {
            double at = y.px(limit.si());
            String text = ChartWords.limit(limit, choice.yUnit());
            double[] middles = {at - OFF * plan.line, at + OFF * plan.line};
            if (at < plot.top() - 0.5) {
                text = WindowText.say("chart.limit.above", text);
                middles = new double[] {plot.top() + plan.line / 2, plot.top() + 1.5 * plan.line};
            } else if (!(at <= plot.bottom() + 0.5)) {
                text = WindowText.say("chart.limit.below", text);
                middles = new double[] {plot.bottom() - plan.line / 2, plot.bottom() - 1.5 * plan.line};
            } else if (limit.side() == Limit.Side.AT_MOST) {
                // On the side where the curves should be; the hatching stands on the other.
                middles = new double[] {middles[1], middles[0]};
            }
            String fitted = lettering.fitted(text, false, plot.width() - lettering.size());
            captions.add(plan.best(fitted, lettering.width(fitted, false), middles, 0.5 * lettering.size()));
        }
        return captions;
    }

    private ChartPlan.Caption best(String text, double width, double[] middles, double edge) {
        Box best = null;
        int least = Integer.MAX_VALUE;
        double room = plot.width() - 2 * edge - width;
        for (double middle : middles) {
            if (middle - line / 2 < plot.top() - 1 || middle + line / 2 > plot.bottom() + 1) {
                continue;
            }
            for (int k = 0; k <= SPOTS; k++) {
                double left = plot.left() + edge + Math.max(0, room) * k / SPOTS;
                Box box = new Box(left, middle - 0.45 * line, left + width, middle + 0.45 * line);
                int crossed = inTheWay(box);
                if (crossed < least) {
                    least = crossed;
                    best = box;
                }
            }
        }
        if (best == null) {
            return new ChartPlan.Caption("", plot.left(), middles[0]);
        }
        taken.add(best);
        return new ChartPlan.Caption(text, best.left(), (best.top() + best.bottom()) / 2);
    }

    private int inTheWay(Box box) {
        int count = 0;
        for (Box name : taken) {
            count += box.meets(name) ? NAME : 0;
        }
        for (Limit other : data.limits()) {
            double at = y.px(other.si());
            count += at > box.top() && at < box.bottom() ? 1 : 0;
        }
        return count + 2 * Curve.crossing(data.series(), box, x, y);
    }
}
