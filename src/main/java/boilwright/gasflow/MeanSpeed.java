package boilwright.gasflow;

import boilwright.units.PhysicalConstants;

/** Mean thermal speed of a gas's molecules, sqrt(8 R T/(pi M)) (S. Dushman, Scientific Foundations of Vacuum Technique). */
public final class MeanSpeed {

    private MeanSpeed() {}

    /**
     * Mean speed.
     *
     * @param temperatureK K
     * @param molarMass kg/mol
     * @return m/s
     */
    public static double of(double temperatureK, double molarMass) {
        return Math.sqrt(8 * PhysicalConstants.MOLAR_GAS_CONSTANT * temperatureK / (Math.PI * molarMass));
    }
}
