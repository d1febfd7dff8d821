package boilwright.gasflow;

/**
 * Conductance of a thin opening in molecular flow, (cbar/4) A (S. Dushman, Scientific Foundations of Vacuum Technique; J. F.
 * O'Hanlon, A User's Guide to Vacuum Technology). Valid while the mean free path is much longer than the opening is wide.
 */
public final class ApertureConductance {
    private ApertureConductance() {}

    /**
     * Volume flow that an opening lets through from one side.
     *
     * @param areaM2 m2
     * @param temperatureK K
     * @param molarMass kg/mol
     * @return m3/s
     */
    public static double of(double areaM2, double temperatureK, double molarMass) {
        return MeanSpeed.of(temperatureK, molarMass) / 4 * areaM2;
    }
}
