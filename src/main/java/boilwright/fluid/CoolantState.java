package boilwright.fluid;

/** Whether a coolant is still a liquid; the property formulas alone would not tell. */
public enum CoolantState {
    /** At or below its freezing point: ice forms. */
    FREEZING,
    /** Between freezing and boiling. */
    LIQUID,
    /** At or above the boiling point of water at its pressure. */
    BOILING;

    /**
     * The state of a coolant.
     *
     * @param coolant what flows
     * @param temperatureK its temperature, K
     * @param pressurePa its absolute pressure, 611.213 Pa to 22.064 MPa; nothing boils above
     */
    public static CoolantState of(Coolant coolant, double temperatureK, double pressurePa) {
        if (temperatureK <= coolant.freezingK()) {
            return FREEZING;
        }
        if (pressurePa > WaterSaturation.HIGHEST_PA) {
            return LIQUID;
        }
        boolean boils = pressurePa < WaterSaturation.LOWEST_PA || temperatureK >= coolant.boilingK(pressurePa);
        return boils ? BOILING : LIQUID;
    }
}
