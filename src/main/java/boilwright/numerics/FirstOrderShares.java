package boilwright.numerics;

/**
 * How much of the variance of a result comes from each of its inputs alone: the first-order index Var(E(Y|X_i)) / Var(Y) of
 * Sobol (Math. Model. Comput. Exp. 1 (1993) 407), estimated from samples of any design. The range of each input is cut into classes of
 * equal probability; the variance of the classes' means over the whole is the correlation ratio (Pearson 1905; Plischke, Borgonovo and
 * Smith, Eur. J. Oper. Res. 226 (2013) 536), here with Kelley's correction for classes that differ by chance (Proc. Natl. Acad. Sci. 21 (1935)
 * 554). Sums are kept for {@value #CLASSES} classes and drawn together at the end, so that memory does not grow with the samples.
 * What only inputs together do is in no share: the shares may sum to less than 1. Samples spread more evenly than by chance need less of the
 * correction than they get; a share may then read low by up to (classes - 1) / samples. The sums depend on the order of the samples
 * in their last digits.
 */
public final class FirstOrderShares {
    /** Most classes of one input. */
    public static final int CLASSES = 64;
    /** Fewest samples from which shares are given. */
    public static final int LEAST_SAMPLES = 128;

    private static final int LEAST_CLASSES = 8;
    private static final int LEAST_IN_CLASS = 32;
    /** Spread below this part of the size of the values is rounding, not an effect of inputs. */
    private static final double ROUNDING = 1e-12;

    private final int inputs;
    private final long[] counts;
    private final double[] sums;
    private long samples;
    private double origin;
    private double sum;
    private double squares;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    /** @param inputs how many inputs there are */
    public FirstOrderShares(int inputs) {
        this.inputs = inputs;
        counts = new long[inputs * CLASSES];
        sums = new double[inputs * CLASSES];
    }

    /**
     * Adds a sample.
     *
     * @param ranks where each input lies in its distribution (its cumulative probability), 0 to 1
     * @param value the result, finite
     */
    public void add(double[] ranks, double value) {
        if (samples == 0) {
            origin = value; // sums of small differences keep their digits
        }
        double v = value - origin;
        samples++;
        sum += v;
        squares += v * v;
        least = Math.min(least, value);
        most = Math.max(most, value);
        for (int i = 0; i < inputs; i++) {
            int at = i * CLASSES + Math.min(CLASSES - 1, (int) (ranks[i] * CLASSES));
            counts[at]++;
            sums[at] += v;
        }
    }

    /** Whether the result varies and there are samples enough to say by what. */
    public boolean isKnown() {
        return samples >= LEAST_SAMPLES && most - least > ROUNDING * Math.max(Math.abs(most), Math.abs(least));
    }

    /**
     * The share of one input, 0 to 1; one that is 0 within its {@link #noise} may come out as 0 or a little more.
     *
     * @param input which, from 0
     * @throws IllegalStateException unless {@link #isKnown}
     */
    public double share(int input) {
        if (!isKnown()) {
            throw new IllegalStateException("no shares from " + samples + " samples");
        }
        int classes = classes();
        int together = CLASSES / classes;
        double between = 0;
        int filled = 0;
        for (int c = 0; c < classes; c++) {
            long n = 0;
            double s = 0;
            for (int k = 0; k < together; k++) {
                int at = input * CLASSES + c * together + k;
                n += counts[at];
                s += sums[at];
            }
            if (n > 0) {
                between += s * (s / n);
                filled++;
            }
        }
        double correction = sum * (sum / samples);
        double ratio = (between - correction) / (squares - correction);
        double unexplained = (1 - ratio) * (samples - 1) / (samples - filled);
        return Math.max(0, Math.min(1, 1 - unexplained));
    }

    /** The share that an input without any effect hardly ever exceeds: three times its standard deviation, for independent samples. */
    public double noise() {
        return 3 * Math.sqrt(2.0 * (classes() - 1)) / Math.max(1, samples);
    }

    private int classes() {
        int classes = LEAST_CLASSES;
        while (classes < CLASSES && samples / (2 * classes) >= LEAST_IN_CLASS) {
            classes *= 2;
        }
        return classes;
    }
}
