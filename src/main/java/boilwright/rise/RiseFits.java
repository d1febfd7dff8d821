package boilwright.rise;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/** Every curve fitted to one record, with its score. */
final class RiseFits {
    /** Beyond this many records a bent curve is as good as straight. */
    private static final double LONGEST_SPANS = 50;

    private static final int WEIGHT_ROUNDS = 2;
    private static final double INTERVALS = 2;
    private static final double LEAST_SHARE_OF_LOWEST = 0.5;

    /** Repeatability of a thermal or ionization gauge, share of the reading; common practice, no source. */
    static final double RELATIVE = 0.01;

    private static final double UNIFORM = 1 / Math.sqrt(12);
    private final double spanS;
    private final CurveSearch search;
    private final Evidence evidence;
    private final Map<RiseCurve, LeastSquaresFit> fits = new EnumMap<>(RiseCurve.class);
    private final OptionalDouble bentWithin;

    RiseFits(RiseRecord record) {
        spanS = record.spanS();
        double[] times = record.elapsedS();
        double[] pressures = record.pressuresPa();
        double shortestS = shortest(times);
        double step = step(pressures);
        double least = LEAST_SHARE_OF_LOWEST * Arrays.stream(pressures).min().orElseThrow();
        // Weights from the readings themselves would favour those that happen to be low: the closest curve smooths
        // them.
        double[] smooth = pressures;
        CurveSearch round = search(times, pressures, smooth, step, shortestS);
        LeastSquaresFit closest = round.best(RiseCurve.MIXED, spanS);
        for (int i = 0; i < WEIGHT_ROUNDS; i++) {
            double[] parameters = closest.parameters();
            smooth = Arrays.stream(times)
                    .map(t -> Math.max(least, RiseCurve.MIXED.value(t, parameters)))
                    .toArray();
            round = search(times, pressures, smooth, step, shortestS);
            closest = round.best(RiseCurve.MIXED, spanS);
        }
        search = round;
        evidence = Evidence.of(search.points().residuals(RiseCurve.MIXED, closest.parameters()));
        fits.put(RiseCurve.MIXED, closest);
        for (RiseCurve curve : RiseCurve.values()) {
            fits.computeIfAbsent(curve, c -> search.best(c, longestS(c)));
        }
        bentWithin = least(
                evidence.score(search.best(RiseCurve.SURFACE_GAS, spanS)),
                evidence.score(search.best(RiseCurve.POWER_LAW, spanS)));
    }

    LeastSquaresFit fit(RiseCurve curve) {
        return fits.get(curve);
    }

    Evidence evidence() {
        return evidence;
    }

    CurveSearch search() {
        return search;
    }

    /** From the first reading to the last, s. */
    double spanS() {
        return spanS;
    }

    /** The score of a curve, the less the better; empty when there are too few readings to tell. */
    OptionalDouble score(RiseCurve curve) {
        return evidence.score(fit(curve));
    }

    /** The best score of surface gas alone with a time constant no longer than the record. */
    OptionalDouble bentWithin() {
        return bentWithin;
    }

    /** The longest time constant looked for, s. A leak beside a bend slower than the record can't be told from the bend. */
    double longestS(RiseCurve curve) {
        return curve == RiseCurve.MIXED ? spanS : LONGEST_SPANS * spanS;
    }

    /** The time constant of a curve with a bent part, s. */
    double timeConstantS(RiseCurve curve) {
        return Math.exp(fit(curve).parameters()[curve.timeIndex()]);
    }

    /** Whether no part of a curve takes gas away. */
    boolean isPossible(RiseCurve curve) {
        double[] parameters = fit(curve).parameters();
        return (!curve.hasStraight() || parameters[curve.straightIndex()] >= 0)
                && (!curve.hasBend() || parameters[curve.bentIndex()] >= 0);
    }

    private static CurveSearch search(
            double[] times, double[] pressures, double[] smooth, double step, double shortestS) {
        return new CurveSearch(new LeastSquaresFit.Points(times, pressures, scatter(smooth, step)), shortestS);
    }

    /** A bend within two intervals is one reading that stands out. */
    private static double shortest(double[] times) {
        double[] intervals = new double[times.length - 1];
        for (int i = 0; i < intervals.length; i++) {
            intervals[i] = times[i + 1] - times[i];
        }
        Arrays.sort(intervals);
        return Math.min(INTERVALS * intervals[intervals.length / 2], times[times.length - 1] / 2);
    }

    private static OptionalDouble least(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() ? other : one;
        }
        return OptionalDouble.of(Math.min(one.getAsDouble(), other.getAsDouble()));
    }

    /**
     * The step of the display, Pa: the least difference between two different readings; 0 when all are alike. A display of
     * figures that float has no such step, and the least difference is then too small to matter.
     */
    private static double step(double[] pressuresPa) {
        double[] sorted = pressuresPa.clone();
        Arrays.sort(sorted);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            double difference = sorted[i] - sorted[i - 1];
            if (difference > 1e-9 * sorted[i]) {
                least = Math.min(least, difference);
            }
        }
        return Double.isFinite(least) ? least : 0;
    }

    /**
     * The scatter that is expected of each reading relative to the others, Pa: a share of the pressure, as gauges have it, and
     * the step of the display. Only the ratio of the two is taken from here; how large the scatter is as a whole, the residuals
     * say.
     */
    private static double[] scatter(double[] pressuresPa, double stepPa) {
        return Arrays.stream(pressuresPa)
                .map(p -> Math.hypot(RELATIVE * p, UNIFORM * stepPa))
                .toArray();
    }
}
