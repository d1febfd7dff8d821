package boilwright.rise;

import boilwright.units.Dimension;
import boilwright.units.UnitTable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Records with a known truth, as a person takes them: ten minutes, 30 to 60 readings at even intervals, a first pressure from
 * 0.01 to 10 Pa that grows to 3 to 21 times itself, scatter of 1 to 2 % of each reading, and a display of three figures. Surface
 * gas alone has a time constant of 0.1 to 0.5 of the record. In a mixture both parts are visible: each makes 30 to 70 % of the
 * rise, and the time constant is 0.08 to 0.35 of the record.
 *
 * @param record the readings
 * @param leakPaPerS true slope of the leak, Pa/s; 0 without one
 * @param gasPaPerS true first slope of the surface gas, Pa/s; 0 without it
 */
record RiseCases(RiseRecord record, double leakPaPerS, double gasPaPerS) {
    static final double SPAN_S = 600;

    static RiseCases leak(long number) {
        Draw draw = new Draw(number);
        double slope = draw.rise / SPAN_S;
        return draw.record(slope, 0, 1);
    }

    static RiseCases surfaceGas(long number) {
        Draw draw = new Draw(number);
        double tau = SPAN_S * draw.between(0.1, 0.5);
        return draw.record(0, draw.rise / reach(tau), tau);
    }

    static RiseCases mixture(long number) {
        Draw draw = new Draw(number);
        double tau = SPAN_S * draw.between(0.08, 0.35);
        double share = draw.between(0.3, 0.7);
        return draw.record(share * draw.rise / SPAN_S, (1 - share) * draw.rise / reach(tau), tau);
    }

    /** What a first slope of one has made by the end. */
    private static double reach(double tau) {
        return tau * (1 - Math.exp(-SPAN_S / tau));
    }

    private static final class Draw {
        private final SplittableRandom random;
        private final int count;
        private final double first;
        private final double rise;
        private final double scatter;

        Draw(long number) {
            random = new SplittableRandom(number);
            count = random.nextInt(30, 61);
            first = Math.pow(10, between(-2, 1));
            rise = first * between(2, 20);
            scatter = between(0.01, 0.02);
        }

        double between(double low, double high) {
            return low + (high - low) * random.nextDouble();
        }

        RiseCases record(double leak, double gas, double tau) {
            List<RiseRecord.Reading> readings = new ArrayList<>();
            for (int i = 0; i < count; i++) {
                double t = SPAN_S * i / (count - 1);
                double p = first + leak * t + gas * tau * (1 - Math.exp(-t / tau));
                readings.add(new RiseRecord.Reading(t, threeFigures(p * (1 + scatter * gauss()))));
            }
            return new RiseCases(si(readings), leak, gas);
        }

        private double gauss() {
            double radius = Math.sqrt(-2 * Math.log(1 - random.nextDouble()));
            return radius * Math.cos(2 * Math.PI * random.nextDouble());
        }

        private static double threeFigures(double p) {
            return BigDecimal.valueOf(p).round(new MathContext(3)).doubleValue();
        }
    }

    /** A record in s and Pa. */
    static RiseRecord si(List<RiseRecord.Reading> readings) {
        return new RiseRecord(
                readings,
                UnitTable.find("s", Dimension.TIME).orElseThrow(),
                UnitTable.find("Pa", Dimension.PRESSURE).orElseThrow());
    }
}
