package boilwright.gasflow;

/** Mean thermal speed of a gas's molecules, sqrt(8 R T/(pi M)) (S. Dushman, Scientific Foundations of Vacuum Technique). */
public final class MeanSpeed {
    /** Molar gas constant, J/(mol K) (CODATA 2018, exact in SI, rounded). */
    public static final double MOLAR_GAS_CONSTANT = 8.314462618;

    private MeanSpeed() {}

    /**
     * Mean speed.
     *
     * @param temperatureK K
     * @param molarMass kg/mol
     * @return m/s
     */
    public static double of(double temperatureK, double molarMass) {
        return Math.sqrt(8 * MOLAR_GAS_CONSTANT * temperatureK / (Math.PI * molarMass));
    }
}
