package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/**
 * Critical heat flux of a boiling pool, q = K hfg sqrt(rho_v) (sigma g (rho_l - rho_v))^(1/4): S. S. Kutateladze (1948), K
 * about 0.16, and N. Zuber, AECU-4439 (1959), K = 0.131. At about 1 Torr it lies far outside Zuber's tests (bubbles are
 * larger than the pool is deep); in thin layers at reduced pressure measurements agree with Kutateladze's form (V. I.
 * Zhukov, A. N. Pavlenko, J. Eng. Thermophys. 22 (2013) 257). Use it to warn of bumping, not as a limit.
 */
public final class CriticalHeatFlux {
    /** Zuber's constant. */
    public static final double ZUBER = 0.131;
    /** Kutateladze's constant, usual value (0.13 to 0.19). */
    public static final double KUTATELADZE = 0.16;

    private CriticalHeatFlux() {}

    /**
     * Flux at which vapour starts to blanket the plate.
     *
     * @param constant {@link #ZUBER} or {@link #KUTATELADZE}
     * @param latentHeat J/kg
     * @param vapourDensity kg/m3
     * @param liquidDensity kg/m3
     * @param surfaceTension N/m
     * @return W/m2
     */
    public static double flux(
            double constant, double latentHeat, double vapourDensity, double liquidDensity, double surfaceTension) {
        double buoyancy = surfaceTension * PhysicalConstants.STANDARD_GRAVITY * (liquidDensity - vapourDensity);
        return constant * latentHeat * Math.sqrt(vapourDensity) * Math.sqrt(Math.sqrt(buoyancy));
    }
}
