package boilwright.heattransfer;

/**
 * Turbulent flow in a smooth tube, V. Gnielinski, Int. Chem. Eng. 16 (1976) 359 (Incropera, Bergman, Lavine, DeWitt, eq.
 * 8.62) with the friction of B. S. Petukhov (1970): Nu = (f/8)(Re - 1000) Pr/(1 + 12.7 sqrt(f/8)(Pr^(2/3) - 1)), f = (0.79
 * ln Re - 1.64)^-2. 3000 <= Re <= 5e6, 0.5 <= Pr <= 2000.
 */
public final class Gnielinski {
    /** Least Reynolds number of the published range. */
    public static final double REYNOLDS_MIN = 3000;

    private Gnielinski() {}

    /**
     * Darcy friction factor of a smooth tube.
     *
     * @param reynolds 3000 to 5e6
     */
    public static double friction(double reynolds) {
        double root = 0.79 * Math.log(reynolds) - 1.64;
        return 1 / (root * root);
    }

    /**
     * Nusselt number far from the inlet.
     *
     * @param reynolds 3000 to 5e6
     * @param prandtl 0.5 to 2000
     */
    public static double nusselt(double reynolds, double prandtl) {
        return nusselt(reynolds, prandtl, friction(reynolds));
    }

    /**
     * Nusselt number far from the inlet for a friction factor that is known better, as in a rough tube.
     *
     * @param reynolds 3000 to 5e6
     * @param prandtl 0.5 to 2000
     * @param friction Darcy friction factor
     */
    public static double nusselt(double reynolds, double prandtl, double friction) {
        double eighth = friction / 8;
        double pr = Math.cbrt(prandtl);
        return eighth * (reynolds - 1000) * prandtl / (1 + 12.7 * Math.sqrt(eighth) * (pr * pr - 1));
    }

    /**
     * Mean Nusselt number over a tube with its inlet, times 1 + (d/L)^(2/3) (Hausen's correction, as used by Gnielinski).
     *
     * @param reynolds 3000 to 5e6
     * @param prandtl 0.5 to 2000
     * @param diameterOverLength d/L, 0 to 1
     */
    public static double meanNusselt(double reynolds, double prandtl, double diameterOverLength) {
        double inlet = Math.cbrt(diameterOverLength);
        return nusselt(reynolds, prandtl) * (1 + inlet * inlet);
    }
}
