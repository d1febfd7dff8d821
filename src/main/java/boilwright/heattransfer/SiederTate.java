package boilwright.heattransfer;

/**
 * Mean Nusselt number of laminar flow in a short tube, E. N. Sieder and G. E. Tate, Ind. Eng. Chem. 28 (1936) 1429: 1.86
 * Gz^(1/3) (mu/mu_w)^0.14. Re below 2300, 0.48 < Pr < 16700, 0.0044 < mu/mu_w < 9.75, and only while Gz^(1/3)
 * (mu/mu_w)^0.14 >= 2 (it tends to 0 in a long tube).
 */
public final class SiederTate {
    private SiederTate() {}

    /**
     * Mean Nusselt number.
     *
     * @param graetz Re Pr d/L
     * @param viscosityRatio viscosity in the bulk over that at the wall
     */
    public static double meanNusselt(double graetz, double viscosityRatio) {
        return 1.86 * Math.cbrt(graetz) * Math.pow(viscosityRatio, 0.14);
    }
}
