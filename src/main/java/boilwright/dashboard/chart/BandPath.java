package boilwright.dashboard.chart;

import java.util.Arrays;
import javafx.scene.paint.Color;

/** Hands a shaded range to a surface, one column of pixels after the other and cut off at the plot. */
final class BandPath {
    private final ChartPlan plan;
    private final double[] xs;
    private final double[] lows;
    private final double[] highs;
    private int count;

    BandPath(ChartPlan plan) {
        this.plan = plan;
        int columns = (int) Math.ceil(plan.plot().width()) + 2;
        xs = new double[columns];
        lows = new double[columns];
        highs = new double[columns];
    }

    void draw(Band band, Surface s, Color shade, Surface.Pen edge) {
        Box plot = plan.plot();
        for (int k = 0; k < xs.length; k++) {
            double px = Math.min(plot.right(), plot.left() + k);
            double place = plan.x().si(px);
            double low = height(band.x(), band.low(), place);
            double high = height(band.x(), band.high(), place);
            if (Double.isNaN(low) || Double.isNaN(high)) {
                flush(s, shade, edge);
            } else {
                xs[count] = px;
                lows[count] = low;
                highs[count++] = high;
            }
        }
        flush(s, shade, edge);
    }

    private double height(double[] x, double[] y, double place) {
        double at = plan.y().px(Curve.at(x, y, place, plan.x(), plan.y()));
        return Math.max(plan.plot().top(), Math.min(plan.plot().bottom(), at));
    }

    private void flush(Surface s, Color shade, Surface.Pen edge) {
        int n = count;
        count = 0;
        if (n < 2) {
            return;
        }
        double[] around = Arrays.copyOf(xs, 2 * n);
        double[] heights = Arrays.copyOf(highs, 2 * n);
        for (int k = 0; k < n; k++) {
            around[2 * n - 1 - k] = xs[k];
            heights[2 * n - 1 - k] = lows[k];
        }
        s.fill(around, heights, 2 * n, shade);
        s.line(xs, highs, n, edge);
        s.line(xs, lows, n, edge);
    }
}
