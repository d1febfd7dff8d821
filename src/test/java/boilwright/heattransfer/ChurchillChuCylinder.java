package boilwright.heattransfer;

/**
 * Natural convection at a lying cylinder of one temperature, as a hose: S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass
 * Transfer 18 (1975) 1049 (Incropera, Bergman, Lavine, DeWitt, eq. 9.34), for every Pr and Ra up to 1e12.
 */
public final class ChurchillChuCylinder {
    private ChurchillChuCylinder() {}

    /**
     * Mean Nusselt number around the cylinder.
     *
     * @param rayleigh on the diameter, 0 to 1e12
     * @param prandtl above 0
     */
    public static double nusselt(double rayleigh, double prandtl) {
        double group = Math.pow(1 + Math.pow(0.559 / prandtl, 9.0 / 16), 8.0 / 27);
        double root = 0.60 + 0.387 * Math.cbrt(Math.sqrt(rayleigh)) / group;
        return root * root;
    }
}
