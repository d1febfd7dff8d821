package boilwright.heattransfer;

import boilwright.units.PhysicalConstants;

/** Radiation between gray diffuse surfaces (Incropera, Bergman, Lavine, DeWitt, ch. 12 and 13, table 13.3). */
public final class ThermalRadiation {

    private ThermalRadiation() {}

    /**
     * Effective emissivity of a body inside another, long concentric cylinders or concentric spheres, on the inner area:
     * 1/(1/e1 + A1/A2 (1/e2 - 1)).
     *
     * @param inner emissivity of the inner body, above 0 to 1
     * @param outer emissivity of the enclosure's inside, above 0 to 1
     * @param areaRatio inner area over outer area, 0 (large surroundings) to 1 (parallel walls)
     */
    public static double effectiveEmissivity(double inner, double outer, double areaRatio) {
        return 1 / (1 / inner + areaRatio * (1 / outer - 1));
    }

    /**
     * Net flux from a surface.
     *
     * @param emissivity effective emissivity, 0 to 1
     * @param surfaceK K
     * @param surroundingsK K
     * @return W/m2 leaving the surface; negative when it gains
     */
    public static double flux(double emissivity, double surfaceK, double surroundingsK) {
        return coefficient(emissivity, surfaceK, surroundingsK) * (surfaceK - surroundingsK);
    }

    /**
     * The same as a coefficient, e sigma (T1^2 + T2^2)(T1 + T2).
     *
     * @param emissivity effective emissivity, 0 to 1
     * @param surfaceK K
     * @param surroundingsK K
     * @return W/(m2 K)
     */
    public static double coefficient(double emissivity, double surfaceK, double surroundingsK) {
        return emissivity
                * PhysicalConstants.STEFAN_BOLTZMANN
                * (surfaceK * surfaceK + surroundingsK * surroundingsK)
                * (surfaceK + surroundingsK);
    }
}
