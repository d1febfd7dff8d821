package boilwright.numerics;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.function.DoubleUnaryOperator;

/**
 * Roots of one equation in one unknown between fixed ends. There is no warm start: the answer depends only on the
 * function and the bracket, so the same question always gives the same bits, whatever was asked before.
 *
 * <p>Method: inverse quadratic interpolation, secant and bisection combined as in R. P. Brent, "Algorithms for
 * Minimization without Derivatives", Prentice-Hall 1973, chapter 4. Written here because it runs inside derivatives,
 * where nothing may be allocated.
 */
public final class Roots {
    private static final int MOST_ITERATIONS = 2000;
    private static final double LEAST_RELATIVE = 2 * Math.ulp(1.0);

    private Roots() {}

    /**
     * A point where {@code f} is zero or changes sign.
     *
     * @param f the function; need not be smooth, may be infinite (not NaN) away from the root; called at least twice
     * @param lo one end, finite
     * @param hi the other end, finite
     * @param relTol accepted width of the last bracket as a fraction of the root, &gt;= 0 (below 4e-16 it is taken as
     *     4e-16)
     * @param absTol accepted width of the last bracket in the unit of the unknown, &gt;= 0
     * @param what what is being solved for, for the message
     * @return the root; exactly {@code lo} or {@code hi} when {@code f} is exactly zero there
     * @throws ComputationException when the signs at the ends are equal, or a value is NaN
     */
    public static double bracketed(
            DoubleUnaryOperator f, double lo, double hi, double relTol, double absTol, String what) {
        if (!Double.isFinite(lo) || !Double.isFinite(hi) || !(relTol >= 0) || !(absTol >= 0)) {
            throw new IllegalArgumentException("a bracket has finite ends and tolerances that are not negative");
        }
        double atLo = valueAt(f, lo, what);
        if (atLo == 0) {
            return lo;
        }
        double atHi = valueAt(f, hi, what);
        if (atHi == 0) {
            return hi;
        }
        if ((atLo > 0) == (atHi > 0)) {
            throw new ComputationException(
                    Message.of(MessageKey.ROOT_NOT_BRACKETED, what, text(lo), text(hi), text(atLo), text(atHi)));
        }
        return search(f, lo, atLo, hi, atHi, relTol, absTol, what, false);
    }

    /**
     * A point at which the function already has the sign it has at {@code hi} (or is zero), at most {@code absTol}
     * beyond the crossing. The values at the ends are known and of opposite sign.
     */
    static double fromAbove(
            DoubleUnaryOperator f, double lo, double atLo, double hi, double atHi, double absTol, String what) {
        return search(f, lo, atLo, hi, atHi, 0, absTol, what, true);
    }

    private static double search(
            DoubleUnaryOperator f,
            double lo,
            double atLo,
            double hi,
            double atHi,
            double relTol,
            double absTol,
            String what,
            boolean fromAbove) {
        double a = lo;
        double b = hi;
        double fa = atLo;
        double fb = atHi;
        // b is the best point so far, c the latest point on the other side of the root, a the best point before b.
        double c = a;
        double fc = fa;
        double step = b - a;
        double stepBefore = step;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            if (Math.abs(fc) < Math.abs(fb)) {
                a = b;
                b = c;
                c = a;
                fa = fb;
                fb = fc;
                fc = fa;
            }
            double tolerance = 0.5 * (Math.max(relTol, LEAST_RELATIVE) * Math.abs(b) + absTol);
            double half = 0.5 * (c - b);
            // The tolerance is half the accepted width, and the last bracket reaches from b to c.
            if (Math.abs(half) <= tolerance || Math.abs(half) <= 0.5 * Math.ulp(b)) {
                return fromAbove ? Math.max(b, c) : b;
            }
            double trial = interpolate(a, b, c, fa, fb, fc, half);
            boolean useful = Math.abs(stepBefore) >= tolerance
                    && Math.abs(fa) > Math.abs(fb)
                    && 2 * Math.abs(trial) < Math.min(3 * Math.abs(half) - tolerance, Math.abs(stepBefore))
                    && trial * half > 0;
            stepBefore = useful ? step : half;
            step = useful ? trial : half;
            a = b;
            fa = fb;
            double next = b + (Math.abs(step) > tolerance ? step : Math.copySign(tolerance, half));
            // A tolerance below the spacing of doubles must still move the point.
            b = next == b ? Math.nextAfter(b, c) : next;
            fb = valueAt(f, b, what);
            if (fb == 0) {
                return b;
            }
            if ((fb > 0) == (fc > 0)) {
                c = a;
                fc = fa;
                step = b - a;
                stepBefore = step;
            }
        }
        throw new ComputationException(
                Message.of(MessageKey.ROOT_NOT_REACHED, what, text(Math.min(b, c)), text(Math.max(b, c))));
    }

    /** The interpolated step from b towards the root; NaN where infinite values leave nothing to interpolate. */
    private static double interpolate(double a, double b, double c, double fa, double fb, double fc, double half) {
        double s = fb / fa;
        double p;
        double q;
        if (a == c) {
            p = 2 * half * s;
            q = 1 - s;
        } else {
            double u = fa / fc;
            double r = fb / fc;
            p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
            q = (u - 1) * (r - 1) * (s - 1);
        }
        return -p / q;
    }

    private static double valueAt(DoubleUnaryOperator f, double x, String what) {
        double value = f.applyAsDouble(x);
        if (Double.isNaN(value)) {
            throw new ComputationException(Message.of(MessageKey.ROOT_VALUE_NOT_A_NUMBER, what, text(x)));
        }
        return value;
    }

    private static String text(double x) {
        return Double.toString(x);
    }
}
