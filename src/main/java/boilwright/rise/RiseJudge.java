package boilwright.rise;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * Chooses between the curves. A curve is preferred over one that says less only when its score is better by the least
 * difference, and a verdict needs its opposite to be worse by as much; all else is undecided.
 */
final class RiseJudge {
    /** 2 ln 20: one curve is 20 times as likely as the other to be the nearer one, given the readings. */
    static final double LEAST_DIFFERENCE = 2 * Math.log(20);
    /** A part that makes less of the rise than this is named, but is no verdict. */
    static final double LEAST_SHARE = 0.05;

    private final RiseFits fits;
    private final double level;
    private final double leak;
    private final double surface;
    private final double powerLaw;
    private final double mixed;

    private RiseJudge(RiseFits fits) {
        this.fits = fits;
        level = fits.score(RiseCurve.LEVEL).orElse(Double.POSITIVE_INFINITY);
        leak = possible(RiseCurve.LEAK);
        surface = possible(RiseCurve.SURFACE_GAS);
        powerLaw = possible(RiseCurve.POWER_LAW);
        mixed = possible(RiseCurve.MIXED);
    }

    static Finding judge(RiseFits fits) {
        return new RiseJudge(fits).finding();
    }

    private Finding finding() {
        double rising = DoubleStream.of(leak, surface, powerLaw, mixed).min().orElseThrow();
        Finding impossible = impossible(Math.min(level, rising));
        if (impossible != null) {
            return impossible;
        }
        if (fits.bentWithin().isEmpty()) {
            return fits.evidence().isCorrelated() ? Finding.STRAYS : Finding.TOO_FEW;
        }
        if (!clearly(rising, level)) {
            return Finding.NO_RISE;
        }
        if (clearly(mixed, Math.min(leak, surface)) && !clearly(powerLaw, mixed)) {
            return shares();
        }
        boolean byPowerLaw = clearly(powerLaw, Math.min(surface, mixed));
        RiseCurve bent = byPowerLaw ? RiseCurve.POWER_LAW : RiseCurve.SURFACE_GAS;
        if (clearly(byPowerLaw ? powerLaw : surface, leak)) {
            if (fits.timeConstantS(bent) > fits.spanS()) {
                return Finding.SLOW_BEND;
            }
            return byPowerLaw ? Finding.GAS_BY_POWER_LAW : Finding.GAS_TO_BALANCE;
        }
        return clearly(leak, fits.bentWithin().getAsDouble()) ? Finding.STEADY_LEAK : Finding.UNCLEAR;
    }

    /** Whether a curve on which gas is taken away is better by far than all that can be; null when not. */
    private Finding impossible(double possible) {
        double clear = possible - 2 * LEAST_DIFFERENCE;
        double falling = impossible(RiseCurve.LEAK);
        double bent = Math.min(impossible(RiseCurve.SURFACE_GAS), impossible(RiseCurve.MIXED));
        if (Math.min(falling, bent) >= clear) {
            return null;
        }
        if (Double.isFinite(falling)) {
            return Finding.FALLS;
        }
        double[] parameters = fits.fit(RiseCurve.MIXED).parameters();
        return parameters[RiseCurve.MIXED.bentIndex()] < 0 ? Finding.STEEPENS : Finding.PUMPED;
    }

    private Finding shares() {
        double[] parameters = fits.fit(RiseCurve.MIXED).parameters();
        double straight = RiseCurve.MIXED.straightPart(fits.spanS(), parameters);
        double bent = RiseCurve.MIXED.bentPart(fits.spanS(), parameters);
        if (straight < LEAST_SHARE * (straight + bent)) {
            return Finding.MOSTLY_GAS;
        }
        return bent < LEAST_SHARE * (straight + bent) ? Finding.MOSTLY_LEAK : Finding.BOTH;
    }

    private double possible(RiseCurve curve) {
        OptionalDouble score = fits.score(curve);
        return fits.isPossible(curve) ? score.orElse(Double.POSITIVE_INFINITY) : Double.POSITIVE_INFINITY;
    }

    private double impossible(RiseCurve curve) {
        return fits.isPossible(curve)
                ? Double.POSITIVE_INFINITY
                : fits.score(curve).orElse(Double.POSITIVE_INFINITY);
    }

    private static boolean clearly(double better, double worse) {
        return better <= worse - LEAST_DIFFERENCE;
    }
}
