package boilwright.thermal;

/**
 * Tells when a run has come to rest: over five minutes nothing that stores much heat has moved by more than a few thousandths
 * of a kelvin. Rates at one moment would only show the integrator's own noise in the fast column cells.
 */
final class RestDetector {
    private static final double SPAN_S = 300;
    private static final double STILL_K = 5e-3;

    private final PumpModel model;
    private final double earliestS;
    private double[] then;
    private double thenS;
    private boolean reached;

    /** @param lastChangeS time of the schedule's last change, before which nothing is at rest, s */
    RestDetector(PumpModel model, double lastChangeS) {
        this.model = model;
        earliestS = lastChangeS;
    }

    /** Looks at the state at the end of an accepted stretch. */
    void look(double t, double[] y) {
        if (reached || t < earliestS) {
            return;
        }
        if (then == null) {
            then = y.clone();
            thenS = t;
        } else if (t - thenS >= SPAN_S) {
            reached = largestChange(y) <= STILL_K * (t - thenS) / SPAN_S;
            System.arraycopy(y, 0, then, 0, y.length);
            thenS = t;
        }
    }

    private double largestChange(double[] y) {
        StateLayout at = model.layout;
        double largest = Math.max(Math.abs(y[at.oil] - then[at.oil]), Math.abs(y[at.boilerWall] - then[at.boilerWall]));
        if (at.sourceSize > 0) {
            largest = Math.max(largest, Math.abs(y[at.source] - then[at.source]));
        }
        for (int i = at.walls; i < at.fill; i++) {
            largest = Math.max(largest, Math.abs(y[i] - then[i]));
        }
        return largest;
    }

    boolean isReached() {
        return reached;
    }
}
