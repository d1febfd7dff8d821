package boilwright.water;

/**
 * What a supply gives and what its circuit takes, at the same flows.
 *
 * @param flowM3PerS flow through the whole circuit, by rising flow from 0, m3/s
 * @param supplyHeadPa what the supply gives, Pa; below zero where the water would have to drive a pump, NaN for a measured
 *     flow
 * @param circuitDropPa what the circuit takes, Pa, rises included
 */
public record CurvePair(double[] flowM3PerS, double[] supplyHeadPa, double[] circuitDropPa) {
    public CurvePair {
        flowM3PerS = flowM3PerS.clone();
        supplyHeadPa = supplyHeadPa.clone();
        circuitDropPa = circuitDropPa.clone();
    }

    /** A copy of the flows, m3/s. */
    @Override
    public double[] flowM3PerS() {
        return flowM3PerS.clone();
    }

    /** A copy of what the supply gives, Pa. */
    @Override
    public double[] supplyHeadPa() {
        return supplyHeadPa.clone();
    }

    /** A copy of what the circuit takes, Pa. */
    @Override
    public double[] circuitDropPa() {
        return circuitDropPa.clone();
    }
}
