package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/**
 * Laminar film condensation, W. Nusselt, Z. VDI 60 (1916) 541; in the form of Incropera, Bergman, Lavine, DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 10. Valid for a film Reynolds number 4 Gamma/mu below 30 (wave-free; above
 * that it is on the low side, see {@link WavyFilm}), no vapour shear, no gas in the vapour. A vertical tube counts as a
 * plate while the film is much thinner than the bore.
 */
public final class NusseltFilm {
    /** Mean coefficient of a vertical plate. */
    public static final double PLATE = 0.943;
    /** Mean coefficient of a single horizontal tube, outside. */
    public static final double HORIZONTAL_TUBE = 0.729;
    /** Film Reynolds number below which the film is free of waves. */
    public static final double WAVE_FREE_REYNOLDS = 30;

    private static final double ROHSENOW = 0.68;

    private NusseltFilm() {}

    /**
     * The liquid's part of the relation, (rho^2 g k^3/mu)^(1/4), the vapour's density neglected. Depends on the liquid
     * only, so it can be tabulated once.
     *
     * @param density liquid density, kg/m3
     * @param conductivity liquid thermal conductivity, W/(m K)
     * @param viscosity liquid dynamic viscosity, Pa s
     */
    public static double filmGroup(double density, double conductivity, double viscosity) {
        return filmGroup(density, 0, conductivity, viscosity);
    }

    /**
     * The liquid's part of the relation with the vapour's buoyancy, (rho (rho - rho_v) g k^3/mu)^(1/4).
     *
     * @param density liquid density, kg/m3
     * @param vapourDensity kg/m3
     * @param conductivity liquid thermal conductivity, W/(m K)
     * @param viscosity liquid dynamic viscosity, Pa s
     */
    public static double filmGroup(double density, double vapourDensity, double conductivity, double viscosity) {
        double cubed = conductivity * conductivity * conductivity;
        return fourthRoot(density * (density - vapourDensity) * PhysicalConstants.STANDARD_GRAVITY * cubed / viscosity);
    }

    /**
     * Latent heat with the film's subcooling, h' = hfg + 0.68 c dT (W. M. Rohsenow, Trans. ASME 78 (1956) 1645).
     *
     * @param latentHeat J/kg
     * @param specificHeat of the liquid, J/(kg K)
     * @param dT saturation temperature less wall temperature, K
     * @return J/kg
     */
    public static double effectiveLatentHeat(double latentHeat, double specificHeat, double dT) {
        return latentHeat + ROHSENOW * specificHeat * dT;
    }

    /**
     * Mean coefficient of a vertical plate or wide tube, h = 0.943 (rho^2 g k^3 h'/(mu L dT))^(1/4).
     *
     * @param filmGroup from {@link #filmGroup(double, double, double)}
     * @param hPrime latent heat with subcooling, J/kg
     * @param lengthM height of the film from its top, m
     * @param dT saturation temperature less wall temperature, K; infinite coefficient at 0 (no film yet), NaN below
     * @return W/(m2 K)
     */
    public static double meanCoefficient(double filmGroup, double hPrime, double lengthM, double dT) {
        return PLATE * filmGroup * fourthRoot(hPrime / (lengthM * dT));
    }

    /**
     * Coefficient at the lower end of a film, three quarters of the mean over its height.
     *
     * @param filmGroup from {@link #filmGroup(double, double, double)}
     * @param hPrime latent heat with subcooling, J/kg
     * @param distanceM distance from the film's top, m
     * @param dT saturation temperature less wall temperature, K
     * @return W/(m2 K)
     */
    public static double localCoefficient(double filmGroup, double hPrime, double distanceM, double dT) {
        return 0.75 * meanCoefficient(filmGroup, hPrime, distanceM, dT);
    }

    /**
     * Mean coefficient outside a single horizontal tube, h = 0.729 (rho^2 g k^3 h'/(mu D dT))^(1/4).
     *
     * @param filmGroup from {@link #filmGroup(double, double, double)}
     * @param hPrime latent heat with subcooling, J/kg
     * @param diameterM outside diameter, m
     * @param dT saturation temperature less wall temperature, K
     * @return W/(m2 K)
     */
    public static double horizontalTubeCoefficient(double filmGroup, double hPrime, double diameterM, double dT) {
        return HORIZONTAL_TUBE * filmGroup * fourthRoot(hPrime / (diameterM * dT));
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

    /**
     * Film Reynolds number, 4 Gamma/mu.
     *
     * @param flowPerWidth mass flow per metre of wetted perimeter, kg/(s m)
     * @param viscosity dynamic, Pa s
     */
    public static double reynolds(double flowPerWidth, double viscosity) {
        return 4 * flowPerWidth / viscosity;
    }

    private static double fourthRoot(double value) {
        return Math.sqrt(Math.sqrt(value));
    }
}
