package boilwright.thermal;

import boilwright.water.OperatingPoint;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The rig at rest at the last level of its schedule. Heat flows close: heatDeliveredW = heatToWaterW + heatToAirW +
 * heatToForelineW, up to closureRelative.
 *
 * @param liquidTemperatureK oil temperature, K
 * @param boilerPressurePa vapour pressure over the oil, Pa
 * @param vapourFlowKgPerS vapour leaving the boiler, kg/s
 * @param heatDeliveredW heat through the boiler's outer face, W
 * @param heatToWaterW heat into the water, W
 * @param heatToAirW heat from pump surfaces to the room, W
 * @param heatToForelineW heat leaving with vapour that does not condense, W
 * @param sourceInputW power the source takes, W (fuel on the gross value)
 * @param sourceLossW what the source loses before the boiler's outer face, W
 * @param sourceK temperature of plate, mantle or heater; empty for sources without a body, K
 * @param outerFaceK boiler's outer face, K
 * @param innerFaceK boiler's inner face, K
 * @param columnMach Mach number at the column's foot
 * @param hydrostaticSuperheatK saturation temperature at the pool's bottom less that at its surface, K
 * @param liquidFraction share of the charge in the boiler while running
 * @param oilLossKgPerS oil leaving into the foreline, kg/s
 * @param returnK temperature at which the condensate returns, mean, K
 * @param waterOutK water outlet, K; empty without water flow
 * @param capK temperature of the top cap, K; empty without one
 * @param hottestOutsideK hottest outside face, K
 * @param boilerGlassStressPa tensile stress in the boiler's glass, Pa; empty for metal
 * @param jacketGlassStressPa highest tensile stress in the body's glass, Pa; empty for metal
 * @param speedM3PerS pumping speed for air at the inlet, m3/s
 * @param throughputPaM3PerS highest throughput, Pa m3/s
 * @param criticalBackingPa foreline pressure at which the lowest jet fails, Pa
 * @param forelinePa foreline pressure, Pa
 * @param columnHeightsM middle heights of the column cells, m
 * @param columnK temperatures of the column cells, K
 * @param columnPa static pressures in the column cells, Pa
 * @param stages the jets, bottom to top
 * @param elements the elements of the cooling circuit, in the order of the rig
 * @param flow water through the circuit
 * @param closureRelative energy balance left over, relative to the heat delivered
 * @param assumptions what was assumed, whole sentences
 */
public record SteadyState(
        double liquidTemperatureK,
        double boilerPressurePa,
        double vapourFlowKgPerS,
        double heatDeliveredW,
        double heatToWaterW,
        double heatToAirW,
        double heatToForelineW,
        double sourceInputW,
        double sourceLossW,
        OptionalDouble sourceK,
        double outerFaceK,
        double innerFaceK,
        double columnMach,
        double hydrostaticSuperheatK,
        double liquidFraction,
        double oilLossKgPerS,
        double returnK,
        OptionalDouble waterOutK,
        OptionalDouble capK,
        double hottestOutsideK,
        OptionalDouble boilerGlassStressPa,
        OptionalDouble jacketGlassStressPa,
        double speedM3PerS,
        double throughputPaM3PerS,
        double criticalBackingPa,
        double forelinePa,
        List<Double> columnHeightsM,
        List<Double> columnK,
        List<Double> columnPa,
        List<StageState> stages,
        List<ElementState> elements,
        OperatingPoint flow,
        double closureRelative,
        List<String> assumptions) {
    public SteadyState {
        columnHeightsM = List.copyOf(columnHeightsM);
        columnK = List.copyOf(columnK);
        columnPa = List.copyOf(columnPa);
        stages = List.copyOf(stages);
        elements = List.copyOf(elements);
        assumptions = List.copyOf(assumptions);
    }

    /** Hottest water between two elements or at the outlet, K, before a hose cools it again; empty without water flow. */
    public OptionalDouble hottestWaterK() {
        return waterOutK.isEmpty() || elements.isEmpty()
                ? waterOutK
                : elements.stream()
                        .filter(e -> e.massFlowKgPerS() > 0)
                        .mapToDouble(ElementState::outletK)
                        .max();
    }
}
