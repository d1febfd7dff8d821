package boilwright.numerics;

import java.util.Arrays;

/**
 * Estimate of the largest eigenvalue magnitude of the matrix of partial derivatives, without forming it: the nonlinear
 * power method of B. P. Sommeijer, L. F. Shampine, J. G. Verwer, "RKC: An explicit solver for parabolic PDEs",
 * J. Comput. Appl. Math. 88 (1998) 315-326, section 3. Lengths are taken in units of each component's accepted error,
 * so that temperatures and masses weigh alike; components that do not count are not displaced.
 */
final class SpectralRadius {
    private static final int MOST_ITERATIONS = 50;
    private static final int SMALLEST_DISPLACEMENTS = 5;
    private static final double SAFETY = 1.2;
    /** Displacement as a fraction of the state, wide enough for derivatives that hold inner roots good to 1e-11. */
    private static final double DISPLACEMENT = 1e-7;

    private final TrialSystem system;
    private final Tolerances tolerances;
    private final double[] direction;
    private final double[] displaced;
    private final double[] derivative;
    private final double[] weight;

    SpectralRadius(TrialSystem system, Tolerances tolerances) {
        this.system = system;
        this.tolerances = tolerances;
        int n = system.size();
        direction = new double[n];
        displaced = new double[n];
        derivative = new double[n];
        weight = new double[n];
    }

    /**
     * The estimate, 1/s, with a safety factor of 1.2.
     *
     * @param f the derivative at (t, y)
     * @param negligible a magnitude, 1/s, below which the estimate need not be sharp
     * @throws boilwright.errors.ComputationException when no state near y has a derivative
     */
    double estimate(double t, double[] y, double[] f, double negligible) {
        int n = y.length;
        double stateLength = 0;
        for (int i = 0; i < n; i++) {
            weight[i] = tolerances.accepted(i, Math.abs(y[i]));
            double scaled = tolerances.counts(i) ? y[i] / weight[i] : 0;
            stateLength += scaled * scaled;
        }
        // At least one accepted error, so that a state of zeros can be displaced.
        double length = Math.max(Math.sqrt(stateLength), 1) * DISPLACEMENT;
        startDirection();
        double sigma = 0;
        double largest = 0;
        for (int iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
            length = displace(t, y, length);
            double change = 0;
            for (int i = 0; i < n; i++) {
                direction[i] = tolerances.counts(i) ? derivative[i] - f[i] : 0;
                double scaled = direction[i] / weight[i];
                change += tolerances.counts(i) ? scaled * scaled : 0;
            }
            double before = sigma;
            sigma = Math.sqrt(change) / length;
            largest = Math.max(largest, sigma);
            if (sigma == 0) {
                // The derivative does not answer to this direction: look along another one, the next component alone.
                Arrays.fill(direction, 0);
                direction[iteration % n] = tolerances.counts(iteration % n) ? weight[iteration % n] : 0;
            }
            if (iteration >= 2 && Math.abs(sigma - before) <= 0.01 * Math.max(sigma, negligible)) {
                return SAFETY * sigma;
            }
        }
        system.counters.roughRadii++;
        return SAFETY * largest;
    }

    /** A fixed start that holds smooth and saw-tooth parts of every component, unless an earlier direction is known. */
    private void startDirection() {
        for (double d : direction) {
            if (d != 0) {
                return;
            }
        }
        for (int i = 0; i < direction.length; i++) {
            direction[i] = tolerances.counts(i) ? weight[i] * ((i % 2 == 0 ? 1.0 : -1.0) + 0.3 * (i % 3)) : 0;
        }
    }

    /** Takes the derivative at y displaced along the direction; the length used, shorter where states can't exist. */
    private double displace(double t, double[] y, double length) {
        double norm = 0;
        for (int i = 0; i < y.length; i++) {
            double scaled = tolerances.counts(i) ? direction[i] / weight[i] : 0;
            norm += scaled * scaled;
        }
        norm = Math.sqrt(norm);
        double wanted = length;
        for (int attempt = 0; attempt < SMALLEST_DISPLACEMENTS; attempt++) {
            for (int side = 1; side >= -1; side -= 2) {
                double factor = norm > 0 ? side * wanted / norm : 0;
                for (int i = 0; i < y.length; i++) {
                    displaced[i] = y[i] + factor * direction[i];
                }
                if (system.tryDerivative(t, displaced, derivative)) {
                    return wanted;
                }
            }
            wanted *= 0.1;
        }
        throw system.startNotPossible(t);
    }
}
