package boilwright.rise;

import java.util.List;

/**
 * A curve with its parameters, as it lies through a record.
 *
 * @param curve which curve
 * @param parameters in the order of the curve, in s and Pa
 * @param startS time of the first reading, s
 */
public record RiseLine(RiseCurve curve, List<Double> parameters, double startS) {
    public RiseLine {
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
