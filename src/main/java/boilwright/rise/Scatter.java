package boilwright.rise;

import java.util.Arrays;

/**
 * The scatter that is expected of each reading relative to the others: a share of the pressure, as gauges have it, and the
 * step of the display. Only the ratio of the two is taken from here; how large the scatter is as a whole, the residuals say.
 */
final class Scatter {
    /** Repeatability of a thermal or ionization gauge, share of the reading; common practice, no source. */
    static final double RELATIVE = 0.01;

    private static final double UNIFORM = 1 / Math.sqrt(12);

    private Scatter() {}

    /**
     * The step of the display, Pa: the least difference between two different readings; 0 when all are alike. A display of
     * figures that float has no such step, and the least difference is then too small to matter.
     */
    static double step(double[] pressuresPa) {
        double[] sorted = pressuresPa.clone();
        Arrays.sort(sorted);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double difference = sorted[i] - sorted[i - 1];
            if (difference > 1e-9 * sorted[i]) {
                least = Math.min(least, difference);
            }
        }
        return Double.isFinite(least) ? least : 0;
    }

    /** The expected scatter of readings at some pressures, Pa. */
    static double[] of(double[] pressuresPa, double stepPa) {
        return Arrays.stream(pressuresPa)
                .map(p -> Math.hypot(RELATIVE * p, UNIFORM * stepPa))
                .toArray();
    }
}
