package boilwright.gasflow;

/**
 * Speed of a vapour-jet pump at its inlet: S0 = Ho (cbar/4) A while the jet takes all that reaches it (T. L. Ho, Physics 2
 * (1932) 386; the Ho coefficient in practice 0.30 to 0.50), then limited by the greatest throughput, S = Qmax/p (M. H.
 * Hablanian, High-Vacuum Technology, from memory).
 */
public final class PumpSpeed {
    private PumpSpeed() {}

    /**
     * Speed at low inlet pressure.
     *
     * @param hoCoefficient 0 to 1
     * @param areaM2 bore area at the top jet, m2
     * @param temperatureK of the gas, K
     * @param molarMass of the gas, kg/mol
     * @return m3/s
     */
    public static double full(double hoCoefficient, double areaM2, double temperatureK, double molarMass) {
        return hoCoefficient * ApertureConductance.of(areaM2, temperatureK, molarMass);
    }
}
