package boilwright.dashboard.chart;

import java.util.Arrays;

/**
 * A curve with no more points than pixels can show: of all points that share a column of pixels the first, the lowest, the
 * highest and the last stay, in their order. So no peak is lost, however narrow it is.
 */
final class Thinning {
    private double[] xs = new double[1024];
    private double[] ys = new double[1024];
    private int count;

    private int column;
    private boolean open;
    private final double[] keptX = new double[4];
    private final double[] keptY = new double[4];
    private final int[] keptAt = new int[4];

    /** Takes what was there away. */
    void clear() {
        count = 0;
        open = false;
    }

    /** Adds the next point, px. */
    void add(int index, double x, double y) {
        int here = (int) Math.floor(x);
        if (open && here != column) {
            flush();
        }
        if (!open) {
            column = here;
            open = true;
            for (int k = 0; k < 4; k++) {
                keep(k, index, x, y);
            }
            return;
        }
        if (y < keptY[1]) {
            keep(1, index, x, y);
        }
        if (y > keptY[2]) {
            keep(2, index, x, y);
        }
        keep(3, index, x, y);
    }

    private void keep(int k, int index, double x, double y) {
        keptX[k] = x;
        keptY[k] = y;
        keptAt[k] = index;
    }

    /** Hands over what was kept of the last column. */
    void flush() {
        if (!open) {
            return;
        }
        open = false;
        boolean lowFirst = keptAt[1] <= keptAt[2];
        int[] order = lowFirst ? new int[] {0, 1, 2, 3} : new int[] {0, 2, 1, 3};
        int last = -1;
        for (int k : order) {
            if (keptAt[k] != last) {
                put(keptX[k], keptY[k]);
                last = keptAt[k];
            }
        }
    }

    private void put(double x, double y) {
        if (count == xs.length) {
            xs = Arrays.copyOf(xs, 2 * count);
            ys = Arrays.copyOf(ys, 2 * count);
        }
        xs[count] = x;
        ys[count++] = y;
    }

    double[] xs() {
        return xs;
    }

    double[] ys() {
        return ys;
    }

    int count() {
        return count;
    }
}
