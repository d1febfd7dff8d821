package boilwright.dashboard.model;

import java.util.List;

/**
 * The pump at one moment of a run, for drawing it.
 *
 * @param part part of the axis
 * @param clockS time since that part began, s
 * @param oilK oil, K
 * @param boilerWallK boiler's wall, K
 * @param sourceK plate, mantle or heater, K; NaN for sources without a body
 * @param columnHeightsM middle heights of the column's cells, m; do not change
 * @param columnK temperatures of the cells, K; do not change
 * @param jets the jets, bottom to top
 * @param capK top cap, K; NaN without one
 * @param waterOutK water outlet, K; NaN without water
 * @param boilerPressurePa pressure over the oil, Pa
 * @param vapourFlowKgPerS vapour leaving the boiler, kg/s
 * @param heatDeliveredW heat through the boiler's outer face, W
 * @param heatToWaterW heat into the water, W
 * @param heatToAirW heat from the pump's surfaces to the room, W
 * @param liquidFraction share of the charge in the boiler. While the rig is not at rest, what is held elsewhere is scaled
 *     from rest with the cube root of the flow, as films are (Nusselt)
 * @param frontHeightM height up to which the column is as hot as its foot, m; 0 without vapour
 */
public record MomentState(
        RunPart part,
        double clockS,
        double oilK,
        double boilerWallK,
        double sourceK,
        double[] columnHeightsM,
        double[] columnK,
        List<JetState> jets,
        double capK,
        double waterOutK,
        double boilerPressurePa,
        double vapourFlowKgPerS,
        double heatDeliveredW,
        double heatToWaterW,
        double heatToAirW,
        double liquidFraction,
        double frontHeightM) {
    public MomentState {
        jets = List.copyOf(jets);
    }
}
