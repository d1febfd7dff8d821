package boilwright.thermal;

import boilwright.rig.SupplyKind;

/**
 * Tells when a run has come to rest: the averages over two successive spans of time agree in everything that stores much
 * heat. Averages, because rates at one moment show the integrator's own noise in the fast column cells, and because a rig
 * under an on/off thermostat never stands still.
 */
final class RestDetector {
    private static final double SPAN_S = 300;
    private static final double STILL_K = 5e-3;
    private static final double CYCLING_SPAN_S = 900;
    private static final double CYCLING_STILL_K = 0.1;
    /** The oil follows a tank that warms by a hundredth of that. */
    private static final double DRIFTING_STILL_K = 0.3;

    private final PumpModel model;
    private final double earliestS;
    private final boolean cycling;
    private final boolean steadyWater;
    private final double spanS;
    private final double stillK;
    private final double[] last;
    private final double[] sum;
    private final double[] averageBefore;
    private double lastS = -1;
    private double spanStartS;
    private boolean hasAverage;
    private boolean reached;

    /**
     * Watches a run.
     *
     * @param model the model
     * @param lastChangeS time of the schedule's last change, before which nothing is at rest, s
     */
    RestDetector(PumpModel model, double lastChangeS) {
        this.model = model;
        earliestS = lastChangeS;
        cycling = model.source.thermostatExcess(model.coldState(), model.layout.source) != -1;
        // a tank that nothing cools warms for ever, and walls with it; the rest follows by a fraction of that
        boolean drifting = model.rig.cooling().supply().kind() == SupplyKind.TANK;
        steadyWater = !drifting && !model.supply.switches();
        spanS = cycling ? CYCLING_SPAN_S : SPAN_S;
        stillK = drifting ? DRIFTING_STILL_K : cycling ? CYCLING_STILL_K : STILL_K;
        last = new double[model.layout.size];
        sum = new double[model.layout.size];
        averageBefore = new double[model.layout.size];
    }

    /** Looks at the state at the end of an accepted stretch. */
    void look(double t, double[] y) {
        if (reached || t < earliestS) {
            return;
        }
        if (lastS < 0) {
            spanStartS = t;
        } else {
            for (int i = 0; i < y.length; i++) {
                sum[i] += (t - lastS) * (last[i] + y[i]) / 2;
            }
        }
        System.arraycopy(y, 0, last, 0, y.length);
        lastS = t;
        if (t - spanStartS >= spanS) {
            closeSpan(t - spanStartS);
            spanStartS = t;
        }
    }

    private void closeSpan(double length) {
        double largest = 0;
        for (int i = 0; i < sum.length; i++) {
            double average = sum[i] / length;
            if (stores(i)) {
                largest = Math.max(largest, Math.abs(average - averageBefore[i]));
            }
            averageBefore[i] = average;
            sum[i] = 0;
        }
        reached = hasAverage && largest <= stillK;
        hasAverage = true;
    }

    private boolean stores(int i) {
        StateLayout at = model.layout;
        return i == at.oil
                || i == at.boilerWall
                || (i == at.source && at.sourceSize > 0 && !cycling)
                || (i >= at.walls && i < at.fill && steadyWater);
    }

    boolean isReached() {
        return reached;
    }
}
