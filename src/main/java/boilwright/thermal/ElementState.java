package boilwright.thermal;

import java.util.OptionalDouble;

/**
 * One element of the cooling circuit at rest.
 *
 * @param element its index among the cooling's elements
 * @param inletK temperature of the water that enters, K
 * @param outletK temperature of the water that leaves, K
 * @param massFlowKgPerS water through it, kg/s
 * @param heatW heat that the water takes up in it, W; negative where it loses some
 * @param coefficient heat transfer coefficient between wall and water, mean by area, W/(m2 K); empty where no wall is cooled
 * @param hottestWallK hottest wall that it cools, K; empty where no wall is cooled
 */
public record ElementState(
        int element,
        double inletK,
        double outletK,
        double massFlowKgPerS,
        double heatW,
        OptionalDouble coefficient,
        OptionalDouble hottestWallK) {}
