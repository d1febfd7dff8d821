package boilwright.numerics;

/**
 * How exact each step has to be: the estimated error of component i in one step may be about
 * absolute_i + relative |y_i|, taken as a root mean square over all components that count. A component with an infinite
 * absolute tolerance (a quadrature that nothing depends on) does not count. Immutable.
 */
public final class Tolerances {
    private final double relative;
    private final double[] absolute;
    private final int counted;

    /**
     * @param relative relative tolerance, 1e-12 to 0.1
     * @param absolute absolute tolerance of each component in its own unit, &gt; 0; infinite: does not count
     */
    public Tolerances(double relative, double... absolute) {
        if (!(relative >= 1e-12 && relative <= 0.1)) {
            throw new IllegalArgumentException("relative tolerance " + relative);
        }
        this.relative = relative;
        this.absolute = absolute.clone();
        int n = 0;
        for (double a : absolute) {
            if (!(a > 0)) {
                throw new IllegalArgumentException("absolute tolerance " + a);
            }
            n += a < Double.POSITIVE_INFINITY ? 1 : 0;
        }
        if (n == 0) {
            throw new IllegalArgumentException("at least one component must count");
        }
        counted = n;
    }

    /** Relative tolerance. */
    double relative() {
        return relative;
    }

    /** Refuses a state of another size. */
    void requireSize(int n) {
        if (n != absolute.length) {
            throw new IllegalArgumentException(absolute.length + " tolerances for " + n + " components");
        }
    }

    /** Whether a component counts in the error. */
    boolean counts(int i) {
        return absolute[i] < Double.POSITIVE_INFINITY;
    }

    /** The accepted error of component i, in its unit, at a state of this magnitude. */
    double accepted(int i, double magnitude) {
        return absolute[i] + relative * magnitude;
    }

    /** Root mean square of an error over the components that count, in units of the accepted error; NaN if any is. */
    double norm(double[] error, double[] y0, double[] y1) {
        double sum = 0;
        for (int i = 0; i < absolute.length; i++) {
            if (counts(i)) {
                double e = error[i] / accepted(i, Math.max(Math.abs(y0[i]), Math.abs(y1[i])));
                sum += e * e;
            }
        }
        return Math.sqrt(sum / counted);
    }

    /** The counted component whose error is largest in units of the accepted error; one with NaN wins. */
    int worst(double[] error, double[] y0, double[] y1) {
        int worst = -1;
        double most = -1;
        for (int i = 0; i < absolute.length; i++) {
            double e = Math.abs(error[i]) / accepted(i, Math.max(Math.abs(y0[i]), Math.abs(y1[i])));
            if (Double.isNaN(e)) {
                return i;
            }
            if (counts(i) && e > most) {
                most = e;
                worst = i;
            }
        }
        return worst;
    }
}
