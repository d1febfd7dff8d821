package boilwright.gasflow;

import boilwright.units.PhysicalConstants;

/**
 * Conductance of a round tube in viscous and transition flow. Viscous: Poiseuille's law for a compressible gas in laminar flow,
 * pi d4 p/(128 eta L) at the mean pressure p. Transition: M. Knudsen, Ann. Phys. 28 (1909) 75, C = Cv + Z Cm with
 * Z = (1 + sqrt(M/(R T)) d p/eta)/(1 + 1.235 sqrt(M/(R T)) d p/eta), as printed in S. Dushman, Scientific Foundations of
 * Vacuum Technique. Its shallow minimum, about 5 % below the molecular value, is real for long tubes.
 */
public final class ViscousConductance {
    private static final double KNUDSEN = 1.235;

    private ViscousConductance() {}

    /**
     * Laminar conductance of a long tube.
     *
     * @param diameterM bore, m
     * @param lengthM length, m, above 0
     * @param meanPa mean pressure in the tube, Pa
     * @param viscosity of the gas, Pa s
     * @return m3/s
     */
    public static double poiseuille(double diameterM, double lengthM, double meanPa, double viscosity) {
        double d2 = diameterM * diameterM;
        return Math.PI * d2 * d2 * meanPa / (128 * viscosity * lengthM);
    }

    /**
     * Share Z of the molecular conductance that adds to the viscous one.
     *
     * @param diameterM bore, m
     * @param meanPa mean pressure in the tube, Pa
     * @param viscosity of the gas, Pa s
     * @param temperatureK K
     * @param molarMass kg/mol
     * @return 1 at low pressure, falling to 0.81
     */
    public static double molecularShare(
            double diameterM, double meanPa, double viscosity, double temperatureK, double molarMass) {
        double x = Math.sqrt(molarMass / (PhysicalConstants.MOLAR_GAS_CONSTANT * temperatureK))
                * diameterM
                * meanPa
                / viscosity;
        return (1 + x) / (1 + KNUDSEN * x);
    }
}
