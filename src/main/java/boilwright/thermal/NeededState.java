package boilwright.thermal;

/**
 * The steady state in which the weakest jet just carries its full flow, with water and room as given.
 *
 * @param state the whole state
 * @param governingStage name of the jet that needs the most
 * @param heatNeededW heat through the boiler's outer face there, W
 * @param heatAvailableW what the source can deliver into that same wall temperature, W
 */
public record NeededState(SteadyState state, String governingStage, double heatNeededW, double heatAvailableW) {}
