package boilwright.numerics;

/**
 * The third-order dense output that belongs to the method (Hairer and Wanner, section IV.7, "Dense output"): needs no
 * derivative at the end, which in a stiff problem would magnify the error there. Holds the arrays of its owner.
 */
final class RodasStep implements StepInterpolant {
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

    @Override
    public double componentAt(int i, double t) {
        double s = (t - t0) / (t1 - t0);
        double r = 1 - s;
        return r * y0[i] + s * (y1[i] + r * (bend[i] + s * skew[i]));
    }
}
