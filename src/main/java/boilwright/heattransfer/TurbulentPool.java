package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/**
 * Turbulent natural convection over a heated plate that faces up, at the bottom of a pool: Nu = 0.15 Ra^(1/3), J. R. Lloyd
 * and W. R. Moran, J. Heat Transfer 96 (1974) 443 (Incropera, Bergman, Lavine, DeWitt, eq. 9.31), 1e7 <= Ra <= 1e11.
 * The length cancels. Below that range it is somewhat low.
 */
public final class TurbulentPool {
    /** Greatest Rayleigh number of the published range. */
    public static final double RAYLEIGH_MAX = 1e11;

    private static final double FACTOR = 0.15;

    private TurbulentPool() {}

    /**
     * The liquid's part of the coefficient, 0.15 k (g beta/(nu alpha))^(1/3), so that it can be kept.
     *
     * @param conductivity of the liquid, W/(m K)
     * @param expansion thermal expansion coefficient, 1/K
     * @param kinematicViscosity m2/s
     * @param diffusivity thermal diffusivity, m2/s
     * @return W/(m2 K^(4/3))
     */
    public static double liquidGroup(
            double conductivity, double expansion, double kinematicViscosity, double diffusivity) {
        return FACTOR
                * conductivity
                * Math.cbrt(PhysicalConstants.STANDARD_GRAVITY * expansion / (kinematicViscosity * diffusivity));
    }
}
