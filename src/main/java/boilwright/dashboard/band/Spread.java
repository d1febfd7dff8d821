package boilwright.dashboard.band;

/**
 * Sets things of given widths side by side, each as near to where it wants to stand as the others allow: the least sum of squared
 * distances with the order kept (isotonic regression by pooling adjacent violators; Barlow, Bartholomew, Bremner and Brunk,
 * Statistical Inference under Order Restrictions, 1972).
 */
final class Spread {
    private Spread() {}

    /** Room that things of these widths need with gaps between them. */
    static double room(double[] widths, double gap) {
        double sum = Math.max(0, widths.length - 1) * gap;
        for (double width : widths) {
            sum += width;
        }
        return sum;
    }

    /**
     * Left edges.
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
