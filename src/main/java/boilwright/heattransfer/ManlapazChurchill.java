package boilwright.heattransfer;

/**
 * Laminar flow in a coiled tube, R. L. Manlapaz and S. W. Churchill, Chem. Eng. Commun. 9 (1981) 185, eq. 39: developed flow,
 * wall of even temperature, Nu = ((3.657 + 4.343/x1)^3 + 1.158 (De/x2)^(3/2))^(1/3) with x1 = (1 + 957/(De^2 Pr))^2 and x2 = 1 +
 * 0.477/Pr. All Dean and Prandtl numbers in laminar flow; 3.657 for a straight tube. For Pr above 20 others find 10 to 35 percent more.
 */
public final class ManlapazChurchill {
    private ManlapazChurchill() {}

    /**
     * Dean number, Re sqrt(d/D).
     *
     * @param reynolds on the bore
     * @param curvature bore over diameter of the coil's centre line, 0 to 0.2
     */
    public static double dean(double reynolds, double curvature) {
        return reynolds * Math.sqrt(curvature);
    }

    /**
     * Nusselt number on the bore.
     *
     * @param dean from {@link #dean}, at least 0
     * @param prandtl above 0
     */
    public static double nusselt(double dean, double prandtl) {
        // De^2 Pr / (De^2 Pr + 957), so that a straight tube needs no exception
        double group = dean * dean * prandtl;
        double root = group / (group + 957);
        double straight = 3.657 + 4.343 * root * root;
        double swirl = dean / (1 + 0.477 / prandtl);
        return Math.cbrt(straight * straight * straight + 1.158 * swirl * Math.sqrt(swirl));
    }
}
