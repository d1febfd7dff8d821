package boilwright.rise;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How many independent readings a record is worth, and what follows for scores and intervals.
 *
 * <p>The score is Akaike's criterion for small samples, n ln(S/n) + 2K + 2K(K+1)/(n-K-1), S the squared residuals, K the
 * parameters with the scatter as one of them (C. M. Hurvich, C.-L. Tsai, Biometrika 76 (1989) 297-307; K. P. Burnham, D. R.
 * Anderson, Model Selection and Multimodel Inference, Springer 2002, section 2.4). Readings whose residuals follow one another,
 * as those of a slow gauge or a logger that averages do, count for fewer: n (1-r)/(1+r) for a correlation r of neighbours
 * (G. V. Bayley, J. M. Hammersley, J. R. Stat. Soc. Suppl. 8 (1946) 184-197).
 */
final class Evidence {
    /** No gauge repeats better than this share of its reading; from memory. */
    private static final double FINEST = 1e-4;
    /** A correlation of neighbours counts from twice its own scatter in random residuals. */
    private static final double NOTICED = 2;

    private static final double MOST_CORRELATED = 0.99;
    private static final double TWO_SIDED_95 = 0.975;

    private final int count;
    private final double effective;

    private Evidence(int count, double effective) {
        this.count = count;
        this.effective = effective;
    }

    /** The evidence in readings, from the residuals of the curve that follows them most closely. */
    static Evidence of(double[] residuals) {
        int n = residuals.length;
        double mean = 0;
        for (double residual : residuals) {
            mean += residual / n;
        }
        double squares = 0;
        double products = 0;
        for (int i = 0; i < n; i++) {
            squares += (residuals[i] - mean) * (residuals[i] - mean);
            products += i == 0 ? 0 : (residuals[i] - mean) * (residuals[i - 1] - mean);
        }
        double floor = n * FINEST * FINEST / (RiseFits.RELATIVE * RiseFits.RELATIVE);
        double r = Math.min(MOST_CORRELATED, products / (squares + floor));
        boolean noticed = r > NOTICED / Math.sqrt(n);
        return new Evidence(n, noticed ? n * (1 - r) / (1 + r) : n);
    }

    /** How many independent readings the record is worth. */
    double effective() {
        return effective;
    }

    /** Whether the readings depend on one another. */
    boolean isCorrelated() {
        return effective < count;
    }

    /** The score of a fit, the less the better; empty when there are too few readings for so many parameters. */
    OptionalDouble score(LeastSquaresFit fit) {
        int k = fit.parameters().length + 1;
        double left = effective - k - 1;
        return left < 1
                ? OptionalDouble.empty()
                : OptionalDouble.of(effective * Math.log(squares(fit) / count) + 2 * k + 2.0 * k * (k + 1) / left);
    }

    /** What the squared residuals may grow by while a parameter stays within its interval of 95 %. */
    double allowance(LeastSquaresFit fit) {
        double t = quantile(fit);
        return t * t * variance(fit);
    }

    /** The quantile of Student's t that belongs to two-sided intervals of 95 %. */
    double quantile(LeastSquaresFit fit) {
        double freedom = Math.max(1, effective - fit.parameters().length);
        return new TDistribution(null, freedom).inverseCumulativeProbability(TWO_SIDED_95);
    }

    /** The variance of a residual over its expected scatter, as wide as the readings depend on one another. */
    double variance(LeastSquaresFit fit) {
        return squares(fit) / Math.max(1, count - fit.parameters().length) * count / effective;
    }

    private double squares(LeastSquaresFit fit) {
        double finest = FINEST / RiseFits.RELATIVE;
        return fit.residualSquares() + count * finest * finest;
    }
}
