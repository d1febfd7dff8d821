package boilwright.rise;

import boilwright.rise.RiseAnswer.Rate;
import boilwright.rise.RiseAnswer.SurfaceGas;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says what was found. */
final class RiseWords {
    private static final UnitSpelling PLAIN =
            UnitTable.find("1", Dimension.FRACTION).orElseThrow();
    private static final double LONG_ENOUGH = 3;
    private static final double MOST_SPANS = 10;
    private static final double AT_THE_END = 1.01;

    private final RiseFits fits;
    private final RiseRecord record;
    private final double volumeM3;

    RiseWords(RiseFits fits, RiseRecord record, double volumeM3) {
        this.fits = fits;
        this.record = record;
        this.volumeM3 = volumeM3;
    }

    /** The one sentence. */
    String sentence(Finding finding, Optional<Rate> leak, Optional<SurfaceGas> gas, Optional<Rate> initial) {
        String straight = leak.map(RiseWords::rate).orElse("");
        String bent = gas.map(g -> rate(g.initialRate())).orElse("");
        String fading = gas.map(g -> time(g.timeConstantS())).orElse("");
        return switch (finding) {
            case STEADY_LEAK -> RiseSentence.STEADY_LEAK.say(straight);
            case MOSTLY_LEAK -> RiseSentence.MOSTLY_LEAK.say(straight, bent);
            case GAS_TO_BALANCE -> RiseSentence.GAS_TO_BALANCE.say(bent, fading);
            case GAS_BY_POWER_LAW -> RiseSentence.GAS_BY_POWER_LAW.say(bent, fading);
            case MOSTLY_GAS -> RiseSentence.MOSTLY_GAS.say(bent, fading, straight);
            case BOTH -> RiseSentence.BOTH.say(straight, bent, fading);
            case NO_RISE -> RiseSentence.NO_RISE.say(figure(mostStraight(RiseCurve.LEAK)));
            case FALLS -> RiseSentence.FALLS.say();
            case STEEPENS -> RiseSentence.STEEPENS.say();
            case PUMPED -> RiseSentence.PUMPED.say();
            case SLOW_BEND -> RiseSentence.SLOW_BEND.say(rate(initial.orElseThrow()), time(longEnough()));
            case TOO_FEW ->
                RiseSentence.TOO_FEW.say(Integer.toString(record.readings().size()));
            case STRAYS -> RiseSentence.STRAYS.say();
            case UNCLEAR -> RiseSentence.UNCLEAR.say();
        };
    }

    /** What else to know. */
    List<String> notes(Finding finding) {
        List<String> notes = new ArrayList<>();
        if (finding == Finding.STEADY_LEAK || finding == Finding.MOSTLY_LEAK || finding == Finding.BOTH) {
            notes.add(RiseSentence.NOTE_STEADY_GAS.say(time(fits.spanS())));
        }
        if (finding == Finding.BOTH && isPowerLawNear()) {
            notes.add(RiseSentence.NOTE_POWER_LAW_NEAR.say(time(fits.timeConstantS(RiseCurve.POWER_LAW))));
        }
        if (finding == Finding.GAS_TO_BALANCE || finding == Finding.GAS_BY_POWER_LAW) {
            notes.add(RiseSentence.NOTE_LEAK_BELOW.say(figure(mostStraight(RiseCurve.MIXED))));
        }
        if (isQuick(finding)) {
            notes.add(RiseSentence.NOTE_QUICK_BEND.say(time(fits.search().shortestS())));
        }
        if (fits.evidence().isCorrelated()) {
            notes.add(RiseSentence.NOTE_CORRELATED.say(
                    Integer.toString(record.readings().size()),
                    Long.toString(Math.max(1, Math.round(fits.evidence().effective())))));
        }
        notes.add(RiseSentence.NOTE_VOLUME.say(QuantityWriter.writeAuto(volumeM3, Dimension.VOLUME)));
        notes.add(RiseSentence.NOTE_GAUGE.say());
        return notes;
    }

    private boolean isPowerLawNear() {
        return fits.score(RiseCurve.POWER_LAW).orElse(Double.POSITIVE_INFINITY)
                < fits.score(RiseCurve.MIXED).orElseThrow() + RiseJudge.LEAST_DIFFERENCE;
    }

    private boolean isQuick(Finding finding) {
        RiseCurve curve = switch (finding) {
            case GAS_TO_BALANCE -> RiseCurve.SURFACE_GAS;
            case GAS_BY_POWER_LAW -> RiseCurve.POWER_LAW;
            case BOTH, MOSTLY_GAS, MOSTLY_LEAK -> RiseCurve.MIXED;
            default -> RiseCurve.LEVEL;
        };
        return curve.hasBend()
                && fits.timeConstantS(curve) < AT_THE_END * fits.search().shortestS();
    }

    /** The greatest leak that the readings allow on a curve with a straight part, Pa m3/s. */
    private double mostStraight(RiseCurve curve) {
        LeastSquaresFit fit = fits.fit(curve);
        int index = curve.straightIndex();
        double half = fit.deviation(index, fits.evidence().allowance(fit)).orElse(0.0);
        return (Math.max(0, fit.parameters()[index]) + half) * volumeM3;
    }

    private double longEnough() {
        return Math.min(LONG_ENOUGH * fits.timeConstantS(RiseCurve.SURFACE_GAS), MOST_SPANS * fits.spanS());
    }

    private static String rate(Rate rate) {
        return RiseSentence.RATE.say(figure(rate.value()), figure(rate.low()), figure(rate.high()));
    }

    private static String figure(double rate) {
        return QuantityWriter.write(rate, PLAIN);
    }

    private static String time(double seconds) {
        return QuantityWriter.writeAuto(seconds, Dimension.TIME);
    }
}
