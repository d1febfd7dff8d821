package boilwright.heattransfer;

/**
 * Laminar flow in a concentric annular gap, walls of even temperature, developed velocity profile (K. Stephan, Chem. Ing.
 * Tech. 34 (1962) 207; VDI Heat Atlas, part G2; constants from memory). Nusselt and Reynolds numbers on the hydraulic
 * diameter do - di; a = di/do, above 0 to 1; Re below 2300.
 */
public final class LaminarAnnulus {
    private LaminarAnnulus() {}

    /**
     * Nusselt number far from the inlet.
     *
     * @param wall which wall passes heat
     * @param diameterRatio di/do, above 0 to 1
     */
    public static double developed(AnnulusWall wall, double diameterRatio) {
        return switch (wall) {
            case INNER -> 3.66 + 1.2 * Math.pow(diameterRatio, -0.8);
            case OUTER -> 3.66 + 1.2 * Math.sqrt(diameterRatio);
            case BOTH -> 3.66 + (4 - 0.102 / (diameterRatio + 0.02)) * Math.pow(diameterRatio, 0.04);
        };
    }

    /**
     * Mean Nusselt number over a gap with its thermal inlet, (Nu1^3 + Nu2^3)^(1/3) with Nu2 = f Gz^(1/3).
     *
     * @param wall which wall passes heat
     * @param diameterRatio di/do, above 0 to 1
     * @param graetz Re Pr dh/L, at least 0
     */
    public static double meanNusselt(AnnulusWall wall, double diameterRatio, double graetz) {
        double far = developed(wall, diameterRatio);
        double inlet = inletFactor(wall, diameterRatio);
        return Math.cbrt(far * far * far + inlet * inlet * inlet * graetz);
    }

    private static double inletFactor(AnnulusWall wall, double a) {
        double shape = switch (wall) {
            case INNER -> 1 / Math.sqrt(a);
            case OUTER -> Math.cbrt(a);
            case BOTH -> Math.pow(a, 0.1);
        };
        return 1.615 * (1 + 0.14 * shape);
    }
}
