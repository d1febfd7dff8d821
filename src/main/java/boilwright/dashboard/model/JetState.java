package boilwright.dashboard.model;

/**
 * One jet at one moment.
 *
 * @param name the stage's name
 * @param wallK temperature of its wall zone, K
 * @param flowKgPerS vapour through its throat, kg/s
 * @param fullFlowFraction flow over its flow at the required boiler pressure
 * @param lit true while it is a jet
 * @param full true while it is lit and carries nine tenths of its full flow or more
 * @param condensedShare share of its vapour that condenses on its wall zone, 0 to 1
 * @param waterK water leaving its zone, K; NaN without water. While the rig is not at rest it is shared out of the
 *     outlet's rise as it is at rest
 */
public record JetState(
        String name,
        double wallK,
        double flowKgPerS,
        double fullFlowFraction,
        boolean lit,
        boolean full,
        double condensedShare,
        double waterK) {
    /** Share of the full flow from which a lit jet is full. */
    public static final double FULL_SHARE = 0.9;

    /** Flow that condenses on its wall, kg/s. */
    public double condensateKgPerS() {
        return flowKgPerS * condensedShare;
    }
}
