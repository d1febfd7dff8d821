package boilwright.water;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What flows where.
 *
 * @param massFlowKgPerS water through the whole circuit, kg/s
 * @param volumeFlowM3PerS the same as volume at the inlet's temperature, m3/s
 * @param elements one for each of the cooling's elements, in their order; none for fins and fan
 * @param supplyHeadPa what the supply gives at this flow, Pa; empty for a flow that was measured and for fins and fan
 * @param circuitDropPa what the circuit takes at this flow, Pa, rises included
 */
public record OperatingPoint(
        double massFlowKgPerS,
        double volumeFlowM3PerS,
        List<ElementFlow> elements,
        OptionalDouble supplyHeadPa,
        double circuitDropPa) {
    public OperatingPoint {
        elements = List.copyOf(elements);
    }

    /**
     * The water in one element.
     *
     * @param massFlowKgPerS mass flow, kg/s
     * @param reynolds Reynolds number at the inlet's temperature; empty where none is defined (valve, rise)
     * @param pressureDropPa pressure lost in it and at its joints, Pa; of a rise the weight of the water
     */
    public record ElementFlow(double massFlowKgPerS, OptionalDouble reynolds, double pressureDropPa) {}
}
