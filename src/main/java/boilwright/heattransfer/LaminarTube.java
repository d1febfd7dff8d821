package boilwright.heattransfer;

/**
 * Laminar flow in a round tube with a developed velocity profile (VDI Heat Atlas, part G1; Incropera, Bergman, Lavine,
 * DeWitt, ch. 8). Valid for Re below 2300. A velocity profile that still develops transfers more, so this is on the
 * careful side.
 */
public final class LaminarTube {
    /** Nusselt number far from the inlet, wall of even temperature. */
    public static final double DEVELOPED_TEMPERATURE = 3.657;

    private LaminarTube() {}

    /**
     * Mean Nusselt number over a tube with a wall of even temperature, (3.66^3 + 0.7^3 + (1.615 Gz^(1/3) - 0.7)^3)^(1/3).
     *
     * @param graetz Re Pr d/L, at least 0
     */
    public static double meanNusselt(double graetz) {
        double inlet = 1.615 * Math.cbrt(graetz) - 0.7;
        double sum = DEVELOPED_TEMPERATURE * DEVELOPED_TEMPERATURE * DEVELOPED_TEMPERATURE
                + 0.7 * 0.7 * 0.7
                + inlet * inlet * inlet;
        return Math.cbrt(sum);
    }
}
