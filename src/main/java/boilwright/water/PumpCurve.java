package boilwright.water;

import boilwright.rig.Supply;
import java.util.List;

/**
 * Head of a pump against its flow through the points of its data sheet: a cubic in each piece with the slopes of F. N. Fritsch
 * and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300 (end slopes by the three-point formula, held to the sign of their
 * piece), which falls wherever the points fall; a straight line for two points. Below the first point's flow the head stays,
 * above the last it goes on straight, as steeply as its last piece or as it falls on the whole, and at least so that it is
 * down to nothing at twice the last flow.
 */
final class PumpCurve {
    private final double[] flow;
    private final double[] head;
    private final double[] slope;
    private final double slopeBeyond;

    /** The curve through at least two points, by rising flow and falling head. */
    static PumpCurve of(Supply.Pump pump) {
        return new PumpCurve(pump.curve());
    }

    private PumpCurve(List<Supply.CurvePoint> points) {
        int n = points.size();
        flow = points.stream().mapToDouble(Supply.CurvePoint::flowM3PerS).toArray();
        head = points.stream().mapToDouble(Supply.CurvePoint::headM).toArray();
        slope = new double[n];
        double[] step = new double[n - 1];
        double[] secant = new double[n - 1];
        for (int i = 0; i < n - 1; i++) {
            step[i] = flow[i + 1] - flow[i];
            secant[i] = (head[i + 1] - head[i]) / step[i];
        }
        for (int i = 1; i < n - 1; i++) {
            slope[i] = inner(step[i - 1], step[i], secant[i - 1], secant[i]);
        }
        if (n == 2) {
            slope[0] = secant[0];
            slope[1] = secant[0];
        } else {
            slope[0] = end(step[0], step[1], secant[0], secant[1]);
            slope[n - 1] = end(step[n - 2], step[n - 3], secant[n - 2], secant[n - 3]);
        }
        double onTheWhole = Math.min(head[n - 1] - head[0], -head[n - 1]) / flow[n - 1];
        slopeBeyond = Math.min(secant[n - 2], onTheWhole);
    }

    private static double inner(double stepBefore, double stepAfter, double before, double after) {
        if (before * after <= 0) {
            return 0;
        }
        double weightBefore = 2 * stepAfter + stepBefore;
        double weightAfter = stepAfter + 2 * stepBefore;
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    private static double end(double step, double next, double secant, double nextSecant) {
        double slope = ((2 * step + next) * secant - step * nextSecant) / (step + next);
        if (slope * secant <= 0) {
            return 0;
        }
        boolean turns = secant * nextSecant <= 0;
        return turns && Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
    }

    /** Head, m; below zero where the water drives the pump. */
    double headM(double flowM3PerS) {
        int last = flow.length - 1;
        if (flowM3PerS <= flow[0]) {
            return head[0];
        }
        if (flowM3PerS >= flow[last]) {
            return head[last] + slopeBeyond * (flowM3PerS - flow[last]);
        }
        int i = 0;
        while (flowM3PerS > flow[i + 1]) {
            i++;
        }
        double width = flow[i + 1] - flow[i];
        double t = (flowM3PerS - flow[i]) / width;
        double s = 1 - t;
        return s * s * ((1 + 2 * t) * head[i] + width * t * slope[i])
                + t * t * ((1 + 2 * s) * head[i + 1] - width * s * slope[i + 1]);
    }

    /** Flow of the last point, m3/s. */
    double lastFlowM3PerS() {
        return flow[flow.length - 1];
    }
}
