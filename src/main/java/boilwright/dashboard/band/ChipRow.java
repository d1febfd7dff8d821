package boilwright.dashboard.band;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** One row of labels along the axis, none over another. Where there is no room for each, neighbours share one. */
final class ChipRow {
    /**
     * A label with its place.
     *
     * @param marks the marks it stands for, in order; at least one
     * @param axisS where they lie on the axis; in the middle of several, s
     * @param x where that is, px
     * @param left its left edge, px
     * @param width how wide it is, px
     */
    record Chip(List<BandMark> marks, double axisS, double x, double left, double width) {}

    private ChipRow() {}

    /**
     * Places labels.
     *
     * @param marks in order of time
     * @param scale where times lie on the axis
     * @param from left end of the axis, px
     * @param to right end of the axis, px
     * @param gap least distance between labels, px
     * @param width how wide a label for these marks is, px
     */
    static List<Chip> place(
            List<BandMark> marks,
            AxisScale scale,
            double from,
            double to,
            double gap,
            ToDoubleFunction<List<BandMark>> width) {
        List<List<BandMark>> groups = new ArrayList<>();
        marks.forEach(mark -> groups.add(List.of(mark)));
        double[] widths = widths(groups, width);
        while (groups.size() > 1 && Spread.room(widths, gap) > to - from) {
            joinNearest(groups, scale);
            widths = widths(groups, width);
        }
        double[] middles = new double[groups.size()];
        double[] centres = new double[groups.size()];
        for (int i = 0; i < centres.length; i++) {
            middles[i] = middle(groups.get(i));
            centres[i] = from + scale.share(middles[i]) * (to - from);
        }
        double[] lefts = Spread.lefts(centres, widths, gap, from, to);
        List<Chip> chips = new ArrayList<>();
        for (int i = 0; i < centres.length; i++) {
            chips.add(new Chip(groups.get(i), middles[i], centres[i], lefts[i], widths[i]));
        }
        return List.copyOf(chips);
    }

    private static double[] widths(List<List<BandMark>> groups, ToDoubleFunction<List<BandMark>> width) {
        return groups.stream().mapToDouble(width).toArray();
    }

    private static void joinNearest(List<List<BandMark>> groups, AxisScale scale) {
        int nearest = 0;
        double least = Double.MAX_VALUE;
        for (int i = 0; i + 1 < groups.size(); i++) {
            double apart = scale.share(middle(groups.get(i + 1))) - scale.share(middle(groups.get(i)));
            if (apart < least) {
                least = apart;
                nearest = i;
            }
        }
        List<BandMark> both = new ArrayList<>(groups.get(nearest));
        both.addAll(groups.remove(nearest + 1));
        groups.set(nearest, List.copyOf(both));
    }

    private static double middle(List<BandMark> marks) {
        return (marks.get(0).axisS() + marks.get(marks.size() - 1).axisS()) / 2;
    }
}
