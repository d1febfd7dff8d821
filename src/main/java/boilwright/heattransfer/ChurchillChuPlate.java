package boilwright.heattransfer;

/**
 * Natural convection at a vertical plate of one temperature, S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer
 * 18 (1975) 1323 (Incropera, Bergman, Lavine, DeWitt, eq. 9.26): Nu = (0.825 + 0.387 Ra^(1/6)/(1 +
 * (0.492/Pr)^(9/16))^(8/27))^2, for every Pr and every Ra up to 1e12.
 */
public final class ChurchillChuPlate {
    /** Greatest Rayleigh number of the published range. */
    public static final double RAYLEIGH_MAX = 1e12;

    private ChurchillChuPlate() {}

    /**
     * Mean Nusselt number over the height.
     *
     * @param rayleigh on the height, 0 to 1e12
     * @param prandtl above 0
     */
    public static double nusselt(double rayleigh, double prandtl) {
        return nusseltWithGroup(rayleigh, prandtlGroup(prandtl));
    }

    /**
     * The part that depends on the Prandtl number only, 0.387/(1 + (0.492/Pr)^(9/16))^(8/27), so that it can be kept.
     *
     * @param prandtl above 0
     */
    public static double prandtlGroup(double prandtl) {
        return 0.387 / Math.pow(1 + Math.pow(0.492 / prandtl, 9.0 / 16), 8.0 / 27);
    }

    /**
     * Mean Nusselt number with a kept Prandtl group.
     *
     * @param rayleigh on the height, 0 to 1e12
     * @param prandtlGroup from {@link #prandtlGroup(double)}
     */
    public static double nusseltWithGroup(double rayleigh, double prandtlGroup) {
        double root = 0.825 + prandtlGroup * Math.cbrt(Math.sqrt(rayleigh));
        return root * root;
    }
}
