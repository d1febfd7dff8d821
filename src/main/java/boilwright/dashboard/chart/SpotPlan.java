package boilwright.dashboard.chart;

import boilwright.dashboard.text.Lettering;
import java.util.ArrayList;
import java.util.List;

/** Names of marked points, each beside its point where it lies over no other name or point and over the fewest curves. */
final class SpotPlan {
    private static final int[][] SIDES = {{1, -1}, {1, 1}, {-1, -1}, {-1, 1}};
    private static final double OFF = 0.75;

    private SpotPlan() {}

    /** The names of those in view; one for which there is no room is empty. */
    static List<ChartPlan.Caption> of(ChartData data, Box plot, Scale x, Scale y, Lettering lettering) {
        double line = lettering.lineHeight();
        List<Box> taken = new ArrayList<>();
        List<Spot> inView = new ArrayList<>();
        for (Spot spot : data.spots()) {
            if (plot.holds(x.px(spot.x()), y.px(spot.y()))) {
                inView.add(spot);
                taken.add(around(x.px(spot.x()), y.px(spot.y()), line / 3));
            }
        }
        List<ChartPlan.Caption> captions = new ArrayList<>();
        for (Spot spot : inView) {
            double px = x.px(spot.x());
            double py = y.px(spot.y());
            double width = lettering.width(spot.title(), false);
            ChartPlan.Caption found = new ChartPlan.Caption("", px, py);
            Box best = null;
            int least = Integer.MAX_VALUE;
            for (int[] side : SIDES) {
                double left = side[0] > 0 ? px + OFF * line / 2 : px - OFF * line / 2 - width;
                double middle = py + side[1] * OFF * line;
                Box box = new Box(left, middle - line / 2, left + width, middle + line / 2);
                boolean within = plot.holds(box.left(), box.top()) && plot.holds(box.right(), box.bottom());
                int crossed = Curve.crossing(data.series(), box, x, y);
                if (within && crossed < least && taken.stream().noneMatch(box::meets)) {
                    best = box;
                    least = crossed;
                    found = new ChartPlan.Caption(spot.title(), left, middle);
                }
            }
            if (best != null) {
                taken.add(best);
            }
            captions.add(found);
        }
        return captions;
    }

    private static Box around(double x, double y, double reach) {
        return new Box(x - reach, y - reach, x + reach, y + reach);
    }
}
