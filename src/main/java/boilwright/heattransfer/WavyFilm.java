package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/**
 * Condensation on a vertical plate with a wavy laminar film (after S. S. Kutateladze; Incropera, Bergman, Lavine, DeWitt,
 * eq. 10.43): Nu = (0.68 P + 0.89)^0.82/P. Published for 15.8 <= P <= 2530, that is a film Reynolds number of about 30
 * to 1800; below, {@link NusseltFilm} holds.
 */
public final class WavyFilm {
    /** Least P of the published range. */
    public static final double P_MIN = 15.8;
    /** Greatest P of the published range. */
    public static final double P_MAX = 2530;

    private WavyFilm() {}

    /**
     * Viscous length (nu^2/g)^(1/3).
     *
     * @param kinematicViscosity of the liquid, m2/s
     * @return m
     */
    public static double viscousLength(double kinematicViscosity) {
        return Math.cbrt(kinematicViscosity * kinematicViscosity / PhysicalConstants.STANDARD_GRAVITY);
    }

    /**
     * Condensation parameter P = k L dT/(mu h' (nu^2/g)^(1/3)).
     *
     * @param conductivity liquid, W/(m K)
     * @param lengthM height of the plate, m
     * @param dT saturation temperature less wall temperature, K
     * @param viscosity liquid, dynamic, Pa s
     * @param hPrime latent heat with subcooling, J/kg
     * @param viscousLengthM from {@link #viscousLength(double)}, m
     */
    public static double parameter(
            double conductivity, double lengthM, double dT, double viscosity, double hPrime, double viscousLengthM) {
        return conductivity * lengthM * dT / (viscosity * hPrime * viscousLengthM);
    }

    /**
     * Mean Nusselt number h (nu^2/g)^(1/3)/k over the plate.
     *
     * @param parameter P, 15.8 to 2530
     */
    public static double nusselt(double parameter) {
        return Math.pow(0.68 * parameter + 0.89, 0.82) / parameter;
    }
}
