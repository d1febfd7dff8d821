package boilwright.gasflow;

/**
 * The jet of an unregulated burner fed by a cartridge at its own vapour pressure: flow = C A p psi(p_room/p), isentropic with
 * gamma 1.1 (butane vapour near room temperature, from memory), choked or subsonic, 0 once the cartridge is at or below the
 * room's pressure. The vapour is taken to reach the jet at one temperature, so flow follows pressure alone.
 */
public final class BurnerOrifice {
    /** Ratio of specific heats of the fuel vapour; from memory. */
    public static final double GAMMA = 1.1;

    private static final double CRITICAL_RATIO = ChokedNozzle.criticalPressureRatio(GAMMA);
    private static final double CHOKED_FACTOR = ChokedNozzle.chokedFactor(GAMMA);

    private BurnerOrifice() {}

    /**
     * What stands beside C A in the flow, p psi(p_room/p).
     *
     * @param cartridgePressure absolute, Pa, above 0
     * @param roomPressure absolute, Pa
     * @return Pa; 0 at or below the room's pressure
     */
    public static double drivingPressure(double cartridgePressure, double roomPressure) {
        return cartridgePressure
                * ChokedNozzle.fluxFactor(roomPressure / cartridgePressure, GAMMA, CRITICAL_RATIO, CHOKED_FACTOR);
    }

    /**
     * Flow relative to that at a reference state, at which it is 1.
     *
     * @param cartridgePressure absolute, Pa, above 0
     * @param roomPressure absolute, Pa
     * @param referenceCartridgePressure absolute, Pa, above the reference room pressure
     * @param referenceRoomPressure absolute, Pa
     * @return at least 0
     */
    public static double relativeFlow(
            double cartridgePressure,
            double roomPressure,
            double referenceCartridgePressure,
            double referenceRoomPressure) {
        return drivingPressure(cartridgePressure, roomPressure)
                / drivingPressure(referenceCartridgePressure, referenceRoomPressure);
    }
}
