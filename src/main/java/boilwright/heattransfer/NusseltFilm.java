package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/**
 * Laminar film condensation, W. Nusselt, Z. VDI 60 (1916) 541; in the form of Incropera, Bergman, Lavine, DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 10. Valid for a film Reynolds number 4 Gamma/mu below 30 (wave-free; above
 * that it is on the low side), no vapour shear, no gas in the vapour. A vertical tube counts as a
 * plate while the film is much thinner than the bore.
 */
public final class NusseltFilm {
    /** Mean coefficient of a vertical plate. */
    public static final double PLATE = 0.943;

    private NusseltFilm() {}

    /**
     * Mean coefficient of a vertical plate or wide tube, h = 0.943 (rho^2 g k^3 h'/(mu L dT))^(1/4).
     *
     * @param filmGroup from {@link boilwright.fluid.TabulatedFluid#filmGroup}
     * @param hPrime latent heat with subcooling, J/kg
     * @param lengthM height of the film from its top, m
     * @param dT saturation temperature less wall temperature, K; infinite coefficient at 0 (no film yet), NaN below
     * @return W/(m2 K)
     */
    public static double meanCoefficient(double filmGroup, double hPrime, double lengthM, double dT) {
        return PLATE * filmGroup * fourthRoot(hPrime / (lengthM * dT));
    }

    /**
     * Thickness of a laminar film running down a wall, (3 mu Gamma/(rho^2 g))^(1/3).
     *
     * @param viscosity dynamic, Pa s
     * @param flowPerWidth mass flow per metre of wetted perimeter, kg/(s m)
     * @param density kg/m3
     * @return m
     */
    public static double filmThickness(double viscosity, double flowPerWidth, double density) {
        return Math.cbrt(3 * viscosity * flowPerWidth / (density * density * PhysicalConstants.STANDARD_GRAVITY));
    }

    private static double fourthRoot(double value) {
        return Math.sqrt(Math.sqrt(value));
    }
}
