package boilwright.estimate;

import java.util.List;

/**
 * Throat gaps in their typical proportions that let the pump work with the heat it is said to work with.
 *
 * @param gapsM gaps from the bottom to the top, m
 * @param workingPressurePa boiler pressure for which they were sought, Pa
 * @param netHeatW heat through the boiler's outer face at which it was to be reached, W
 * @param heatNeededW heat through the boiler's outer face at which it is reached with these gaps, W; another than the net
 *     heat only at an end of the range
 * @param end whether the gaps were found, or an end of what is usual had to do
 */
public record ThroatFit(List<Double> gapsM, double workingPressurePa, double netHeatW, double heatNeededW, End end) {
    /** How the search ended. */
    public enum End {
        /** The gaps fit. */
        FOUND,
        /** Even the narrowest usual throats need more heat. */
        NARROWEST,
        /** Even the widest usual throats need less heat. */
        WIDEST
    }

    public ThroatFit {
        gapsM = List.copyOf(gapsM);
    }
}
