package boilwright.thermal;

/**
 * One jet at one moment.
 *
 * @param name the stage's name
 * @param flowKgPerS vapour through its throat, kg/s
 * @param pressurePa static pressure before its throat, Pa
 * @param outletPressurePa pressure it works against, Pa
 * @param lit true while it is a jet
 * @param full true while it carries its full flow
 * @param fullFlowFraction flow over its flow at the required boiler pressure
 * @param condensedShare share of the vapour on its wall zone that condenses there, 0 to 1
 * @param filmMarginK saturation temperature at the wall less the film's surface temperature, K
 * @param wallK temperature of its wall zone, K
 * @param waterK water temperature leaving its zone, K; room temperature where no water passes
 * @param zoneHeatW heat into its wall zone, W
 * @param darkReason why it is not lit, in words; empty while it is
 */
public record StageState(
        String name,
        double flowKgPerS,
        double pressurePa,
        double outletPressurePa,
        boolean lit,
        boolean full,
        double fullFlowFraction,
        double condensedShare,
        double filmMarginK,
        double wallK,
        double waterK,
        double zoneHeatW,
        String darkReason) {}
