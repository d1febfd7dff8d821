package boilwright.rise;

import boilwright.numerics.Roots;
import java.util.Optional;

/**
 * The interval of a slope by its profile: all values at which the readings can still be followed, everything else fitted
 * anew, with squared residuals no larger than the allowance (D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its
 * Applications, Wiley 1988, section 6.1). Slope and time constant of a bend are tied together in a way that an interval from
 * the curvature at the best point does not follow.
 */
final class RateInterval {
    private static final double GROWTH = 1.6;
    private static final int MOST_STEPS = 60;
    private static final double TOLERANCE = 1e-6;

    private final RiseFits fits;
    private final RiseCurve curve;
    private final LeastSquaresFit best;
    private final int index;
    private final double allowed;

    private RateInterval(RiseFits fits, RiseCurve curve, int index) {
        this.fits = fits;
        this.curve = curve;
        this.best = fits.fit(curve);
        this.index = index;
        this.allowed = fits.evidence().allowance(best);
    }

    /** The interval of the parameter of a curve that is a slope, Pa/s; it does not reach below zero. */
    static Rate of(RiseFits fits, RiseCurve curve, int index) {
        return new RateInterval(fits, curve, index).interval();
    }

    private Rate interval() {
        double value = best.parameters()[index];
        double step = best.deviation(index, allowed).filter(s -> s > 0).orElse(0.1 * Math.abs(value));
        double high = end(value, step);
        double low = excess(0) < 0 ? 0 : end(value, -Math.min(step, value));
        return new Rate(value, Math.max(0, low), high);
    }

    private double end(double value, double step) {
        double inner = value;
        double outer = value + step;
        for (int i = 0; i < MOST_STEPS && excess(outer) < 0; i++) {
            inner = outer;
            step *= GROWTH;
            outer = step < 0 ? Math.max(0, outer + step) : outer + step;
        }
        return Roots.bracketed(this::excess, inner, outer, TOLERANCE, 0, "the end of an interval");
    }

    /** By how much the readings are followed worse than allowed when the slope is held. */
    private double excess(double held) {
        Optional<LeastSquaresFit> fit =
                fits.search().holding(curve, index, held, best.parameters(), fits.longestS(curve));
        double squares = fit.map(LeastSquaresFit::residualSquares).orElse(Double.POSITIVE_INFINITY);
        return squares - best.residualSquares() - allowed;
    }
}
