package boilwright.numerics;

import java.util.Arrays;

/**
 * Linearly implicit method of order 4 with an estimate of order 3, stiffly accurate and L-stable, six stages: suits any
 * stiff system, whatever its eigenvalues. Each accepted step takes one matrix of partial derivatives, each trial step
 * one full elimination.
 *
 * <p>Source: RODAS, E. Hairer, G. Wanner, "Solving Ordinary Differential Equations II. Stiff and
 * Differential-Algebraic Problems", 2nd ed. 1996, section IV.7 (formula 7.4, implementation after 7.25) and VI.4 for
 * the set of coefficients. The coefficients stand here from memory; tests show the order of the method, of its error
 * estimate and of its dense output.
 */
public final class Rosenbrock implements OdeIntegrator {
    private static final int STAGES = 6;
    private static final double GAMMA = 0.25;
    /** Times of the stages; the last two are at the end of the step. */
    private static final double[] ALPHA = {0, 0.386, 0.21, 0.63, 1, 1};
    /** Shares of the derivative by time. */
    private static final double[] TIME_SHARE = {0.25, -0.1043, 0.1035, -0.3620000000000023e-1, 0, 0};

    /** Stage states; the sixth is the fifth plus the fifth stage itself, written out. */
    private static final double[][] A = {
        {},
        {1.544},
        {0.9466785280815826, 0.2557011698983284},
        {3.314825187068521, 2.896124015972201, 0.9986419139977817},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950},
        {1.221224509226641, 6.019134481288629, 12.53708332932087, -0.6878860361058950, 1},
    };

    private static final double[][] C = {
        {},
        {-5.6688},
        {-2.430093356833875, -0.2063599157091915},
        {-0.1073529058151375, -9.594562251023355, -20.47028614809616},
        {7.496443313967647, -10.24680431464352, -33.99990352819905, 11.70890893206160},
        {8.083246795921522, -7.981132988064893, -31.52159432874371, 16.31930543123136, -6.058818238834054},
    };

    private static final double[] BEND = {
        10.12623508344586, -7.487995877610167, -34.80091861555747, -7.992771707568823, 1.025137723295662
    };
    private static final double[] SKEW = {
        -0.6762803392806898, 6.087714651680015, 16.43084320892478, 24.76722511418386, -6.594389125716872
    };

    private TrialSystem system;
    private Tolerances tolerances;
    private double smallestStep;
    private double largestStep;

    private double t;
    private double[] y;
    private double[] yNew;
    private double[] f;
    private double[] fNew;
    private double[] byTime;
    private double[][] jacobian;
    private double[][] matrix;
    private double[][] stages;
    private DenseLu lu;
    private final RodasStep dense = new RodasStep();

    private boolean derivativesAreFresh;
    private double nextStep;
    private double stepBefore;
    private double errorBefore;

    @Override
    public void attach(TrialSystem trialSystem, Tolerances accepted, double smallest, double largest) {
        int n = trialSystem.size();
        accepted.requireSize(n);
        system = trialSystem;
        tolerances = accepted;
        smallestStep = smallest;
        largestStep = largest;
        y = new double[n];
        yNew = new double[n];
        f = new double[n];
        fNew = new double[n];
        byTime = new double[n];
        jacobian = new double[n][n];
        matrix = new double[n][n];
        stages = new double[STAGES][n];
        lu = new DenseLu(n);
        dense.bend = new double[n];
        dense.skew = new double[n];
    }

    @Override
    public void restart(double time, double[] state, double limit) {
        t = time;
        System.arraycopy(state, 0, y, 0, y.length);
        system.start(t, y, f);
        nextStep = firstStepSize(limit - t);
        stepBefore = Double.NaN;
        takeDerivatives(limit);
    }

    @Override
    public StepInterpolant step(double limit) {
        if (!derivativesAreFresh) {
            takeDerivatives(limit);
        }
        double h = nextStep;
        boolean rejected = false;
        while (true) {
            h = Math.min(h, largestStep);
            boolean last = 1.1 * h >= limit - t;
            if (last) {
                h = limit - t;
            }
            double tNew = last ? limit : t + h;
            system.forgetFault();
            boolean possible = advance(h) && system.tryDerivative(tNew, yNew, fNew);
            double size = possible ? tolerances.norm(stages[STAGES - 1], y, yNew) : Double.POSITIVE_INFINITY;
            if (size <= 1) {
                accept(tNew, h, size, rejected);
                return dense;
            }
            rejected = true;
            system.counters.rejected++;
            if (h <= smallest()) {
                throw system.stepTooSmall(
                        t, h, possible ? tolerances.worst(stages[STAGES - 1], y, yNew) : tolerances.worst(f, y, y));
            }
            // An impossible state says nothing about how much shorter the step must be.
            h *= Double.isFinite(size) ? Math.max(0.2, 0.9 / fourthRoot(size)) : 0.25;
            h = Math.max(h, smallest());
        }
    }

    private double smallest() {
        return Math.max(smallestStep, 16 * Math.ulp(t));
    }

    private void takeDerivatives(double limit) {
        system.jacobian(t, y, f, jacobian);
        Arrays.fill(byTime, 0);
        if (!system.system.isAutonomous()) {
            double later = system.seen(t + Math.min(1e-6 * Math.max(Math.abs(t), 1), Math.min(nextStep, limit - t)));
            double displacement = later - t;
            // A step of one rounding unit before a stop point has no room to differ in time, and no need.
            if (displacement > 0) {
                if (!system.tryDerivative(later, y, byTime)) {
                    throw system.startNotPossible(t);
                }
                for (int i = 0; i < byTime.length; i++) {
                    byTime[i] = (byTime[i] - f[i]) / displacement;
                }
            }
        }
        derivativesAreFresh = true;
    }

    /** First step after E. Hairer, S. P. Norsett, G. Wanner, "Solving ODEs I", 2nd ed. 1993, section II.4. */
    private double firstStepSize(double span) {
        double most = Math.min(largestStep, span);
        double size = tolerances.norm(y, y, y);
        double speed = tolerances.norm(f, y, y);
        double h = size < 1e-5 || speed < 1e-5 ? 1e-6 : 0.01 * size / speed;
        h = Math.min(h, most);
        double[] trial = stages[0];
        double[] derivative = stages[1];
        while (true) {
            for (int i = 0; i < y.length; i++) {
                trial[i] = y[i] + h * f[i];
            }
            system.forgetFault();
            if (system.tryDerivative(t + h, trial, derivative)) {
                break;
            }
            if (h <= smallest()) {
                throw system.stepTooSmall(t, h, tolerances.worst(f, y, y));
            }
            h = Math.max(0.1 * h, smallest());
        }
        for (int i = 0; i < y.length; i++) {
            derivative[i] = (derivative[i] - f[i]) / h;
        }
        double fastest = Math.max(speed, tolerances.norm(derivative, y, y));
        double proposed = fastest <= 1e-15 ? Math.max(1e-6, 1e-3 * h) : fourthRoot(0.01 / fastest);
        return Math.min(most, Math.max(smallest(), Math.min(100 * h, proposed)));
    }

    /** All stages of one trial step; false when a state can't exist. The result is in yNew, the error in the last. */
    private boolean advance(double h) {
        int n = y.length;
        for (int i = 0; i < n; i++) {
            double[] row = matrix[i];
            double[] partial = jacobian[i];
            for (int j = 0; j < n; j++) {
                row[j] = -partial[j];
            }
            row[i] += 1 / (h * GAMMA);
        }
        if (!lu.factor(matrix)) {
            return false;
        }
        for (int s = 0; s < STAGES; s++) {
            double[] stage = stages[s];
            if (s == 0) {
                System.arraycopy(f, 0, stage, 0, n);
            } else {
                System.arraycopy(y, 0, yNew, 0, n);
                for (int j = 0; j < s; j++) {
                    addTo(yNew, A[s][j], stages[j]);
                }
                if (!system.tryDerivative(t + ALPHA[s] * h, yNew, stage)) {
                    return false;
                }
            }
            for (int j = 0; j < s; j++) {
                addTo(stage, C[s][j] / h, stages[j]);
            }
            addTo(stage, h * TIME_SHARE[s], byTime);
            lu.solve(stage);
        }
        addTo(yNew, 1, stages[STAGES - 1]);
        return true;
    }

    private static double fourthRoot(double x) {
        return Math.sqrt(Math.sqrt(x));
    }

    private static void addTo(double[] sum, double factor, double[] term) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * term[i];
        }
    }

    private void accept(double tNew, double h, double size, boolean rejected) {
        double factor = 0.9 / fourthRoot(size);
        if (!Double.isNaN(stepBefore)) {
            // Predictive control (Hairer and Wanner, section IV.8): how did the error change from step to step?
            double predicted = 0.9 * h / stepBefore * fourthRoot(errorBefore / (size * size));
            factor = Math.min(factor, predicted);
        }
        factor = Math.min(rejected ? 1 : 6, Math.max(0.2, factor));
        nextStep = Math.max(smallest(), factor * h);
        stepBefore = h;
        errorBefore = Math.max(size, 1e-2);
        system.counters.steps++;
        Arrays.fill(dense.bend, 0);
        Arrays.fill(dense.skew, 0);
        for (int s = 0; s < BEND.length; s++) {
            addTo(dense.bend, BEND[s], stages[s]);
            addTo(dense.skew, SKEW[s], stages[s]);
        }
        dense.t0 = t;
        dense.t1 = tNew;
        dense.y0 = y;
        dense.y1 = yNew;
        // The old start serves the interpolant until the next trial step overwrites it.
        double[] old = y;
        y = yNew;
        yNew = old;
        old = f;
        f = fNew;
        fNew = old;
        t = tNew;
        derivativesAreFresh = false;
    }

    /**
     * The third-order dense output that belongs to the method (Hairer and Wanner, section IV.7, "Dense output"): needs no
     * derivative at the end, which in a stiff problem would magnify the error there. Holds the arrays of its owner.
     */
    private static final class RodasStep implements StepInterpolant {
        double t0;
        double t1;
        double[] y0;
        double[] y1;
        /** Coefficients of s (1 - s) and of s^2 (1 - s). */
        double[] bend;

        double[] skew;

        @Override
        public double start() {
            return t0;
        }

        @Override
        public double end() {
            return t1;
        }

        @Override
        public void stateAt(double t, double[] y) {
            if (t == t0 || t == t1) {
                System.arraycopy(t == t1 ? y1 : y0, 0, y, 0, y0.length);
                return;
            }
            for (int i = 0; i < y0.length; i++) {
                y[i] = componentAt(i, t);
            }
        }

        private double componentAt(int i, double t) {
            double s = (t - t0) / (t1 - t0);
            double r = 1 - s;
            return r * y0[i] + s * (y1[i] + r * (bend[i] + s * skew[i]));
        }
    }
}
