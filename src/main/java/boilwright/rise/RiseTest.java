package boilwright.rise;

import boilwright.numerics.Roots;
import boilwright.rise.RiseAnswer.Rate;
import boilwright.rise.RiseAnswer.SurfaceGas;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * The pressure-rise test: does a chamber that is shut off leak, or do its surfaces give off gas? docs/model/rise-test.md says
 * how it is decided.
 */
public final class RiseTest {
    private final RiseFits fits;
    private final double volumeM3;

    private RiseTest(RiseFits fits, double volumeM3) {
        this.fits = fits;
        this.volumeM3 = volumeM3;
    }

    /**
     * Answers what makes the pressure rise.
     *
     * @param record the readings
     * @param volumeM3 volume that was shut off, m3, &gt; 0 and finite
     * @throws IllegalArgumentException when the volume is none
     */
    public static RiseAnswer of(RiseRecord record, double volumeM3) {
        if (!(volumeM3 > 0 && Double.isFinite(volumeM3))) {
            throw new IllegalArgumentException("a volume is greater than zero");
        }
        return new RiseTest(new RiseFits(record), volumeM3).answer(record);
    }

    private RiseAnswer answer(RiseRecord record) {
        Finding finding = RiseJudge.judge(fits);
        RiseCurve curve = curve(finding);
        boolean decided = finding.verdict() != Verdict.UNDECIDED;
        Optional<Rate> leak =
                decided && curve.hasStraight() ? Optional.of(rate(curve, curve.straightIndex())) : Optional.empty();
        Optional<SurfaceGas> gas = decided && curve.hasBend()
                ? Optional.of(new SurfaceGas(
                        rate(curve, curve.bentIndex()), fits.timeConstantS(curve), curve == RiseCurve.POWER_LAW))
                : Optional.empty();
        Optional<Rate> initial = initial(curve, leak, gas);
        RiseWords words = new RiseWords(fits, record, volumeM3);
        Map<RiseCurve, OptionalDouble> scores = new EnumMap<>(RiseCurve.class);
        for (RiseCurve each : RiseCurve.values()) {
            scores.put(each, fits.score(each));
        }
        return new RiseAnswer(
                record,
                volumeM3,
                finding.verdict(),
                words.sentence(finding, leak, gas, initial),
                leak,
                gas,
                initial,
                scores,
                RiseJudge.LEAST_DIFFERENCE,
                new RiseAnswer.Line(curve, list(fits.fit(curve).parameters()), record.startS()),
                words.notes(finding));
    }

    /** The curve that a finding rests on. */
    private RiseCurve curve(Finding finding) {
        return switch (finding) {
            case STEADY_LEAK -> RiseCurve.LEAK;
            case GAS_TO_BALANCE, SLOW_BEND -> RiseCurve.SURFACE_GAS;
            case GAS_BY_POWER_LAW -> RiseCurve.POWER_LAW;
            case MOSTLY_LEAK, MOSTLY_GAS, BOTH -> RiseCurve.MIXED;
            default ->
                Stream.of(RiseCurve.values())
                        .min(Comparator.comparingDouble(
                                        (RiseCurve c) -> fits.score(c).orElse(Double.POSITIVE_INFINITY))
                                .thenComparingDouble(c -> fits.fit(c).residualSquares()))
                        .orElseThrow();
        };
    }

    private Rate rate(RiseCurve curve, int index) {
        return RateInterval.of(fits, curve, index).times(volumeM3);
    }

    /** All gas together at the first reading; a curve on which gas is taken away has no such rate. */
    private Optional<Rate> initial(RiseCurve curve, Optional<Rate> leak, Optional<SurfaceGas> gas) {
        if (curve == RiseCurve.LEVEL || !fits.isPossible(curve)) {
            return Optional.empty();
        }
        if (curve == RiseCurve.MIXED) {
            return Optional.of(together());
        }
        return leak.or(() -> gas.map(SurfaceGas::initialRate)).or(() -> Optional.of(rate(curve, 1)));
    }

    /** The sum of both slopes, with the interval from the curvature at the best point: the parts are tied together. */
    private Rate together() {
        LeastSquaresFit fit = fits.fit(RiseCurve.MIXED);
        double[] sum = new double[RiseCurve.MIXED.parameterCount()];
        sum[RiseCurve.MIXED.straightIndex()] = 1;
        sum[RiseCurve.MIXED.bentIndex()] = 1;
        double[] parameters = fit.parameters();
        double value = parameters[RiseCurve.MIXED.straightIndex()] + parameters[RiseCurve.MIXED.bentIndex()];
        double half = fit.deviation(sum, fits.evidence().allowance(fit)).orElse(value);
        return new Rate(value, Math.max(0, value - half), value + half).times(volumeM3);
    }

    private static List<Double> list(double[] values) {
        return Arrays.stream(values).boxed().toList();
    }

    /**
     * The interval of a slope by its profile: all values at which the readings can still be followed, everything else fitted
     * anew, with squared residuals no larger than the allowance (D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its
     * Applications, Wiley 1988, section 6.1). Slope and time constant of a bend are tied together in a way that an interval from
     * the curvature at the best point does not follow.
     */
    static final class RateInterval {
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
}
