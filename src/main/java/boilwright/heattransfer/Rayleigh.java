package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/** The Rayleigh number, Ra = g beta |dT| L^3/(nu alpha) (Incropera, Bergman, Lavine, DeWitt, eq. 9.25). */
public final class Rayleigh {
    private Rayleigh() {}

    /**
     * Rayleigh number of a wall in a fluid.
     *
     * @param expansion thermal expansion coefficient of the fluid, 1/K; 1/T for an ideal gas
     * @param dT temperature difference between wall and fluid, K; its sign is not used
     * @param lengthM characteristic length, m
     * @param kinematicViscosity m2/s
     * @param diffusivity thermal diffusivity, m2/s
     * @return dimensionless, at least 0
     */
    public static double number(
            double expansion, double dT, double lengthM, double kinematicViscosity, double diffusivity) {
        return PhysicalConstants.STANDARD_GRAVITY
                * expansion
                * Math.abs(dT)
                * lengthM
                * lengthM
                * lengthM
                / (kinematicViscosity * diffusivity);
    }
}
