package boilwright.numerics;

/**
 * Second-order Runge-Kutta-Chebyshev method: explicit, with as many stages as the stiffness of the moment asks for.
 * Suits stiff systems whose eigenvalues lie near the negative real axis (conduction, relaxation); needs no matrix.
 *
 * <p>Source: B. P. Sommeijer, L. F. Shampine, J. G. Verwer, "RKC: An explicit solver for parabolic PDEs", J. Comput.
 * Appl. Math. 88 (1998) 315-326: formulas (2.1)-(2.8), error estimate and step control of section 3. Dense output is
 * cubic Hermite, as there. The spectral radius is estimated anew every 25 steps, after a rejected step and at each
 * restart.
 */
public final class StabilizedExplicit implements OdeIntegrator {
    private static final int STEPS_BETWEEN_ESTIMATES = 25;
    private static final double MOST_GROWTH = 10;
    private static final double ROUND_OFF = Math.ulp(1.0) / 2;

    private TrialSystem system;
    private Tolerances tolerances;
    private SpectralRadius spectralRadius;
    private double smallestStep;
    private double largestStep;
    private int mostStages;

    private double t;
    private double[] y;
    private double[] f;
    private double[] yNew;
    private double[] fNew;
    private double[] stageBefore;
    private double[] stageTwoBefore;
    private double[] stageDerivative;
    private double[] error;
    private final HermiteStep dense = new HermiteStep();

    private double radius;
    private boolean radiusIsFresh;
    private int stepsSinceEstimate;
    private double nextStep;
    private double stepBefore;
    private double errorBefore;
    private boolean firstStep;

    @Override
    public void attach(TrialSystem trialSystem, Tolerances accepted, double smallest, double largest) {
        int n = trialSystem.size();
        accepted.requireSize(n);
        system = trialSystem;
        tolerances = accepted;
        smallestStep = smallest;
        largestStep = largest;
        spectralRadius = new SpectralRadius(trialSystem, accepted);
        mostStages = (int) Math.max(2, Math.round(Math.sqrt(accepted.relative() / (10 * ROUND_OFF))));
        y = new double[n];
        f = new double[n];
        yNew = new double[n];
        fNew = new double[n];
        stageBefore = new double[n];
        stageTwoBefore = new double[n];
        stageDerivative = new double[n];
        error = new double[n];
    }

    @Override
    public void restart(double time, double[] state, double limit) {
        t = time;
        System.arraycopy(state, 0, y, 0, y.length);
        system.start(t, y, f);
        estimateRadius(limit - t);
        nextStep = firstStepSize(limit - t);
        firstStep = true;
    }

    @Override
    public StepInterpolant step(double limit) {
        if (!radiusIsFresh && stepsSinceEstimate >= STEPS_BETWEEN_ESTIMATES) {
            estimateRadius(limit - t);
        }
        double h = nextStep;
        boolean rejected = false;
        while (true) {
            h = Math.min(h, largestStep);
            boolean last = 1.1 * h >= limit - t;
            if (last) {
                h = limit - t;
            }
            int stages = 1 + (int) Math.sqrt(1.54 * h * radius + 1);
            if (stages > mostStages) {
                stages = mostStages;
                h = ((double) stages * stages - 1) / (1.54 * radius);
                last = false;
            }
            stages = Math.max(stages, 2);
            double tNew = last ? limit : t + h;
            system.forgetFault();
            boolean possible = advance(h, stages) && system.tryDerivative(tNew, yNew, fNew);
            double size = possible ? errorSize(h) : Double.POSITIVE_INFINITY;
            if (size <= 1) {
                accept(tNew, h, size, rejected ? 1 : MOST_GROWTH);
                return dense;
            }
            rejected = true;
            system.counters.rejected++;
            if (h <= smallest()) {
                throw system.stepTooSmall(
                        t, h, possible ? tolerances.worst(error, y, yNew) : tolerances.worst(f, y, y));
            }
            // An impossible state says nothing about how much shorter the step must be.
            h *= Double.isFinite(size) ? Math.max(0.1, 0.8 / StrictMath.cbrt(size)) : 0.25;
            h = Math.max(h, smallest());
            if (!radiusIsFresh) {
                estimateRadius(limit - t);
            }
        }
    }

    private double smallest() {
        return Math.max(smallestStep, 16 * Math.ulp(t));
    }

    private void estimateRadius(double span) {
        double negligible = 1 / Math.min(largestStep, span);
        radius = spectralRadius.estimate(t, y, f, negligible);
        radiusIsFresh = true;
        stepsSinceEstimate = 0;
    }

    /** First step from one trial along the derivative (the paper's section 3, "initial step size"). */
    private double firstStepSize(double span) {
        double most = Math.min(largestStep, span);
        double h = most;
        if (radius * h > 1) {
            h = 1 / radius;
        }
        h = Math.max(h, Math.min(smallest(), most));
        while (true) {
            for (int i = 0; i < y.length; i++) {
                yNew[i] = y[i] + h * f[i];
            }
            system.forgetFault();
            if (system.tryDerivative(t + h, yNew, fNew)) {
                break;
            }
            if (h <= smallest()) {
                throw system.stepTooSmall(t, h, tolerances.worst(f, y, y));
            }
            h = Math.max(0.1 * h, smallest());
        }
        for (int i = 0; i < y.length; i++) {
            error[i] = h * (fNew[i] - f[i]);
        }
        double size = Math.sqrt(tolerances.norm(error, y, y));
        double proposed = 0.1 * h < most * size ? 0.1 * h / size : most;
        return Math.min(most, Math.max(proposed, smallest()));
    }

    /** All stages of one trial step; false when one of them is a state that can't exist. The result is in yNew. */
    private boolean advance(double h, int stages) {
        int n = y.length;
        double w0 = 1 + 2.0 / (13.0 * stages * stages);
        double a = w0 * w0 - 1;
        double b = Math.sqrt(a);
        double arg = stages * StrictMath.log(w0 + b);
        double w1 = StrictMath.sinh(arg) * a / (StrictMath.cosh(arg) * stages * b - w0 * StrictMath.sinh(arg));
        double coefficientBefore = 1 / (4 * w0 * w0);
        double coefficientTwoBefore = coefficientBefore;
        double shareBefore = w1 * coefficientBefore;
        double shareTwoBefore = 0;
        for (int i = 0; i < n; i++) {
            stageTwoBefore[i] = y[i];
            stageBefore[i] = y[i] + h * shareBefore * f[i];
        }
        // Chebyshev polynomial of the stage's degree at w0 with its first and second derivative, and the two before.
        double cheb = w0;
        double chebBefore = 1;
        double slope = 1;
        double slopeBefore = 0;
        double bend = 0;
        double bendBefore = 0;
        for (int j = 2; j <= stages; j++) {
            double chebNext = 2 * w0 * cheb - chebBefore;
            double slopeNext = 2 * w0 * slope - slopeBefore + 2 * cheb;
            double bendNext = 2 * w0 * bend - bendBefore + 4 * slope;
            double coefficient = bendNext / (slopeNext * slopeNext);
            double ajBefore = 1 - cheb * coefficientBefore;
            double mu = 2 * w0 * coefficient / coefficientBefore;
            double nu = -coefficient / coefficientTwoBefore;
            double muTilde = mu * w1 / w0;
            if (!system.tryDerivative(t + h * shareBefore, stageBefore, stageDerivative)) {
                return false;
            }
            double rest = 1 - mu - nu;
            double weight = h * muTilde;
            for (int i = 0; i < n; i++) {
                yNew[i] = mu * stageBefore[i]
                        + nu * stageTwoBefore[i]
                        + rest * y[i]
                        + weight * (stageDerivative[i] - ajBefore * f[i]);
            }
            double share = mu * shareBefore + nu * shareTwoBefore + muTilde * (1 - ajBefore);
            if (j < stages) {
                double[] free = stageTwoBefore;
                stageTwoBefore = stageBefore;
                stageBefore = yNew;
                yNew = free;
                shareTwoBefore = shareBefore;
                shareBefore = share;
                coefficientTwoBefore = coefficientBefore;
                coefficientBefore = coefficient;
                chebBefore = cheb;
                cheb = chebNext;
                slopeBefore = slope;
                slope = slopeNext;
                bendBefore = bend;
                bend = bendNext;
            }
        }
        return true;
    }

    /** The estimated error of the trial step in units of the accepted error. */
    private double errorSize(double h) {
        for (int i = 0; i < y.length; i++) {
            error[i] = 0.8 * (y[i] - yNew[i]) + 0.4 * h * (f[i] + fNew[i]);
        }
        double size = tolerances.norm(error, y, yNew);
        return Double.isNaN(size) ? Double.POSITIVE_INFINITY : size;
    }

    private void accept(double tNew, double h, double size, double mostGrowth) {
        double growth = mostGrowth;
        double root = StrictMath.cbrt(size);
        if (firstStep) {
            growth = 0.8 < growth * root ? 0.8 / root : growth;
        } else {
            // Predictive control: the error of the step before shows how fast the problem changes.
            double above = 0.8 * h * StrictMath.cbrt(errorBefore);
            double below = stepBefore * root * root;
            growth = above < growth * below ? above / below : growth;
        }
        nextStep = Math.max(smallest(), Math.max(0.1, growth) * h);
        // A tiny error after a capped growth says nothing about how fast the problem changes.
        errorBefore = Math.max(size, 1e-2);
        stepBefore = h;
        firstStep = false;
        radiusIsFresh = false;
        stepsSinceEstimate++;
        system.counters.steps++;
        dense.t0 = t;
        dense.t1 = tNew;
        dense.y0 = y;
        dense.f0 = f;
        dense.y1 = yNew;
        dense.f1 = fNew;
        // The end becomes the next start; the old start serves the interpolant until the next step overwrites it.
        double[] oldY = y;
        double[] oldF = f;
        y = yNew;
        f = fNew;
        yNew = oldY;
        fNew = oldF;
        t = tNew;
    }

    /**
     * Cubic interpolation from the states and derivatives at both ends of a step (Hermite; Hairer, Norsett, Wanner,
     * "Solving Ordinary Differential Equations I", 2nd ed. 1993, eq. II.6.7). Holds the arrays of its owner.
     */
    private static final class HermiteStep implements StepInterpolant {
        double t0;
        double t1;
        double[] y0;
        double[] f0;
        double[] y1;
        double[] f1;

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
            double h = t1 - t0;
            double s = (t - t0) / h;
            double r = 1 - s;
            double chord = y1[i] - y0[i];
            return r * y0[i] + s * y1[i] - s * r * ((1 - 2 * s) * chord - r * h * f0[i] + s * h * f1[i]);
        }
    }
}
