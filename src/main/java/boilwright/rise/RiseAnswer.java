package boilwright.rise;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a record of a rising pressure says.
 *
 * @param record the record
 * @param volumeM3 volume that was shut off, m3
 * @param verdict what makes the pressure rise
 * @param sentence the same with its rates, as one sentence
 * @param leak the leak's rate, where the verdict counts on one
 * @param surfaceGas what the surfaces give off, where the verdict counts on it
 * @param initialRise all gas together at the first reading; empty when no rise shows
 * @param scores score of each curve, the less the better; empty for one with too many parameters for the readings
 * @param leastDifference the difference of scores that counts
 * @param line the curve that the rates are from; for an undecided record the one with the best score
 * @param notes what else to know, whole sentences
 */
public record RiseAnswer(
        RiseRecord record,
        double volumeM3,
        Verdict verdict,
        String sentence,
        Optional<Rate> leak,
        Optional<SurfaceGas> surfaceGas,
        Optional<Rate> initialRise,
        Map<RiseCurve, OptionalDouble> scores,
        double leastDifference,
        Line line,
        List<String> notes) {
    public RiseAnswer {
        scores = Collections.unmodifiableMap(new EnumMap<>(scores));
        notes = List.copyOf(notes);
    }

    /**
     * A rate at which gas comes in, with the interval that holds the true one in 95 of 100 cases.
     *
     * @param value best estimate, Pa m3/s
     * @param low lower end, Pa m3/s
     * @param high upper end, Pa m3/s
     */
    public record Rate(double value, double low, double high) {
        Rate times(double factor) {
            return new Rate(value * factor, low * factor, high * factor);
        }
    }

    /**
     * Gas that the surfaces give off.
     *
     * @param initialRate at the first reading
     * @param timeConstantS time constant of the balance, s; for the power law the time in which the rate halves, s
     * @param byPowerLaw whether the rate falls with one over the time instead of toward a balance
     */
    public record SurfaceGas(RiseAnswer.Rate initialRate, double timeConstantS, boolean byPowerLaw) {}

    /**
     * A curve with its parameters, as it lies through a record.
     *
     * @param curve which curve
     * @param parameters in the order of the curve, in s and Pa
     * @param startS time of the first reading, s
     */
    public record Line(RiseCurve curve, List<Double> parameters, double startS) {
        public Line {
            parameters = List.copyOf(parameters);
        }

        /**
         * The pressure on the curve, Pa.
         *
         * @param timeS as the record counts it, s
         */
        public double pressureAt(double timeS) {
            return curve.value(timeS - startS, array());
        }

        /** The pressure, Pa, if only the straight part were there. */
        public double straightAt(double timeS) {
            return parameters.get(0) + curve.straightPart(timeS - startS, array());
        }

        /** The pressure, Pa, if only the bent part were there. */
        public double bentAt(double timeS) {
            return parameters.get(0) + curve.bentPart(timeS - startS, array());
        }

        private double[] array() {
            return parameters.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }
}
