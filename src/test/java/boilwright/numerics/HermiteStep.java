package boilwright.numerics;

/**
 * Cubic interpolation from the states and derivatives at both ends of a step (Hermite; Hairer, Norsett, Wanner,
 * "Solving Ordinary Differential Equations I", 2nd ed. 1993, eq. II.6.7). Holds the arrays of its owner.
 */
final class HermiteStep implements StepInterpolant {
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

    @Override
    public double componentAt(int i, double t) {
        double h = t1 - t0;
        double s = (t - t0) / h;
        double r = 1 - s;
        double chord = y1[i] - y0[i];
        return r * y0[i] + s * y1[i] - s * r * ((1 - 2 * s) * chord - r * h * f0[i] + s * h * f1[i]);
    }
}
