package boilwright.heattransfer;

/**
 * Mean Nusselt number of laminar flow in a tube with a wall of even temperature and developed velocity profile, H. Hausen,
 * Z. VDI Beih. Verfahrenstechnik 4 (1943) 91: 3.66 + 0.0668 Gz/(1 + 0.04 Gz^(2/3)). Re below 2300.
 */
public final class HausenTube {
    private HausenTube() {}

    /**
     * Mean Nusselt number.
     *
     * @param graetz Re Pr d/L, at least 0
     */
    public static double meanNusselt(double graetz) {
        double root = Math.cbrt(graetz);
        return 3.66 + 0.0668 * graetz / (1 + 0.04 * root * root);
    }
}
