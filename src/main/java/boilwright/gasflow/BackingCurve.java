package boilwright.gasflow;

import boilwright.numerics.Roots;

/**
 * Volume speed of a backing pump against its inlet pressure: straight lines between the points of its data sheet on
 * logarithmic axes, level beyond them, times (1 - ultimate/pressure), which ends at the lowest pressure the pump reaches (J. F.
 * O'Hanlon, A User's Guide to Vacuum Technology, from memory).
 */
public final class BackingCurve {
    private static final double TOLERANCE = 1e-11;
    /** No backing pump is asked for a flow that needs more than this, Pa: ten atmospheres. */
    private static final double HIGHEST_PA = 1e6;
    /** Start of the search for a pump without an ultimate pressure, Pa. */
    private static final double LOWEST_PA = 1e-12;

    private final double[] logPressure;
    private final double[] logSpeed;
    private final double ultimatePa;

    /**
     * A curve.
     *
     * @param pressurePa inlet pressures, Pa, rising
     * @param speedM3PerS volume speeds at them without the fall to the ultimate pressure, m3/s, above 0
     * @param ultimatePa lowest pressure reached, Pa, at least 0
     * @throws IllegalArgumentException when the arrays are empty, differ in length, fall in pressure or are not positive
     */
    public BackingCurve(double[] pressurePa, double[] speedM3PerS, double ultimatePa) {
        if (pressurePa.length == 0 || pressurePa.length != speedM3PerS.length || !(ultimatePa >= 0)) {
            throw new IllegalArgumentException("a curve needs a speed for each of its pressures");
        }
        this.ultimatePa = ultimatePa;
        logPressure = new double[pressurePa.length];
        logSpeed = new double[pressurePa.length];
        for (int i = 0; i < pressurePa.length; i++) {
            boolean rises = i == 0 || pressurePa[i] > pressurePa[i - 1];
            if (!rises || !(pressurePa[i] > 0) || !(speedM3PerS[i] > 0)) {
                throw new IllegalArgumentException("pressures rise and speeds are positive");
            }
            logPressure[i] = Math.log(pressurePa[i]);
            logSpeed[i] = Math.log(speedM3PerS[i]);
        }
    }

    /**
     * Gas taken, p S(p).
     *
     * @param pressurePa inlet pressure, Pa
     * @return Pa m3/s; 0 at and below the ultimate pressure
     */
    public double throughput(double pressurePa) {
        return pressurePa <= ultimatePa ? 0 : gross(pressurePa) * (pressurePa - ultimatePa);
    }

    private double gross(double pressurePa) {
        double x = Math.log(pressurePa);
        int last = logPressure.length - 1;
        if (x <= logPressure[0]) {
            return Math.exp(logSpeed[0]);
        }
        if (x >= logPressure[last]) {
            return Math.exp(logSpeed[last]);
        }
        int i = 1;
        while (logPressure[i] < x) {
            i++;
        }
        double share = (x - logPressure[i - 1]) / (logPressure[i] - logPressure[i - 1]);
        return Math.exp(logSpeed[i - 1] + share * (logSpeed[i] - logSpeed[i - 1]));
    }

    /**
     * Inlet pressure at which the pump takes a flow of gas.
     *
     * @param throughput Pa m3/s, at least 0
     * @return Pa
     * @throws boilwright.errors.ComputationException when a million pascal would not do
     */
    public double pressureFor(double throughput) {
        if (throughput <= 0) {
            return ultimatePa;
        }
        // in logarithms: pressures span ten decades
        double low = Math.log(Math.max(ultimatePa, LOWEST_PA));
        double root = Roots.bracketed(
                x -> throughput(Math.exp(x)) - throughput,
                low,
                Math.log(HIGHEST_PA),
                0,
                TOLERANCE,
                "pressure at the backing pump");
        return Math.exp(root);
    }
}
