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
        while (groups.size() > 1 && room(widths, gap) > to - from) {
            joinNearest(groups, scale);
            widths = widths(groups, width);
        }
        double[] middles = new double[groups.size()];
        double[] centres = new double[groups.size()];
        for (int i = 0; i < centres.length; i++) {
            middles[i] = middle(groups.get(i));
            centres[i] = from + scale.share(middles[i]) * (to - from);
        }
        double[] lefts = lefts(centres, widths, gap, from, to);
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

    /** Room that labels of these widths need with gaps between them. */
    static double room(double[] widths, double gap) {
        double sum = Math.max(0, widths.length - 1) * gap;
        for (double width : widths) {
            sum += width;
        }
        return sum;
    }

    /**
     * Left edges, each label as near to where it wants to stand as the others allow: the least sum of squared distances with the
     * order kept (isotonic regression by pooling adjacent violators; Barlow, Bartholomew, Bremner and Brunk, Statistical Inference
     * under Order Restrictions, 1972).
     *
     * @param centres where each wants its middle, not falling
     * @param widths how wide each is
     * @param gap least distance between neighbours
     * @param from left end of the room
     * @param to right end of the room; when the room is too small, the last ones stand beyond it
     */
    static double[] lefts(double[] centres, double[] widths, double gap, double from, double to) {
        int n = centres.length;
        double[] before = new double[n];
        for (int i = 1; i < n; i++) {
            before[i] = before[i - 1] + widths[i - 1] + gap;
        }
        double[] mean = new double[n];
        int[] count = new int[n];
        int pools = 0;
        for (int i = 0; i < n; i++) {
            mean[pools] = centres[i] - widths[i] / 2 - before[i];
            count[pools++] = 1;
            while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
                int both = count[pools - 2] + count[pools - 1];
                mean[pools - 2] = (mean[pools - 2] * count[pools - 2] + mean[pools - 1] * count[pools - 1]) / both;
                count[pools - 2] = both;
                pools--;
            }
        }
        double most = to - room(widths, gap);
        double[] lefts = new double[n];
        int at = 0;
        for (int p = 0; p < pools; p++) {
            for (int k = 0; k < count[p]; k++, at++) {
                lefts[at] = Math.max(from, Math.min(most, mean[p])) + before[at];
            }
        }
        return lefts;
    }
}
