package boilwright.heattransfer;

/**
 * A cylinder across a stream, as a pump's body before a fan: S. W. Churchill and M. Bernstein, J. Heat Transfer 99 (1977) 300
 * (Incropera, Bergman, Lavine, DeWitt, eq. 7.54), for Re Pr above 0.2 up to Re 1e7; properties at the film. Without flow it
 * gives 0.3, so natural convection has to be its floor.
 */
public final class ChurchillBernstein {
    private ChurchillBernstein() {}

    /**
     * Mean Nusselt number around the cylinder.
     *
     * @param reynolds on the diameter, 0 to 1e7
     * @param prandtl above 0
     */
    public static double nusselt(double reynolds, double prandtl) {
        double group = 1 + Math.pow(0.4 / prandtl, 2.0 / 3);
        double laminar = 0.62 * Math.sqrt(reynolds) * Math.cbrt(prandtl) / Math.sqrt(Math.sqrt(group));
        return 0.3 + laminar * Math.pow(1 + Math.pow(reynolds / 282000, 5.0 / 8), 4.0 / 5);
    }
}
