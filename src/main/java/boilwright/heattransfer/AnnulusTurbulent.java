package boilwright.heattransfer;

/**
 * Turbulent flow in a concentric annular gap, V. Gnielinski, Heat Transfer Eng. 30 (2009) 431 and VDI Heat Atlas, part G2
 * (constants from memory). Nusselt and Reynolds numbers on the hydraulic diameter do - di; a = di/do. Published for Re above
 * 1e4 (used here from 4000, see {@link AnnulusFlow}), 0.1 <= Pr <= 1000.
 */
public final class AnnulusTurbulent {
    // below this the exact form loses its digits, and the limit 2/3 for parallel walls holds to 1e-8
    private static final double PARALLEL = 1e-4;

    private AnnulusTurbulent() {}

    /**
     * Reynolds number that stands for the same friction in a round tube, Re ((1 + a^2) ln a + 1 - a^2)/((1 - a)^2 ln a).
     *
     * @param reynolds on the hydraulic diameter
     * @param diameterRatio di/do, above 0 to 1
     */
    public static double equivalentReynolds(double reynolds, double diameterRatio) {
        double gap = 1 - diameterRatio;
        if (gap >= 0 && gap < PARALLEL) {
            return reynolds * 2 / 3;
        }
        // a gap with the inner wall outside the outer one is no gap
        double log = gap < 0 ? Double.NaN : Math.log(diameterRatio);
        double square = diameterRatio * diameterRatio;
        return reynolds * ((1 + square) * log + 1 - square) / (gap * gap * log);
    }

    /**
     * Darcy friction factor of the smooth gap, (1.8 log10 Re* - 1.5)^-2.
     *
     * @param equivalentReynolds from {@link #equivalentReynolds(double, double)}
     */
    public static double friction(double equivalentReynolds) {
        double root = 1.8 * Math.log10(equivalentReynolds) - 1.5;
        return 1 / (root * root);
    }

    /**
     * Mean Nusselt number over the gap with its inlet.
     *
     * @param wall which wall passes heat; for both it is the mean of the two, weighted by their areas
     * @param diameterRatio di/do, above 0 to 1
     * @param reynolds 4000 to 1e6
     * @param prandtl 0.1 to 1000
     * @param diameterOverLength dh/L, 0 to 1
     */
    public static double meanNusselt(
            AnnulusWall wall, double diameterRatio, double reynolds, double prandtl, double diameterOverLength) {
        double eighth = friction(equivalentReynolds(reynolds, diameterRatio)) / 8;
        double pr = Math.cbrt(prandtl);
        double inlet = Math.cbrt(diameterOverLength);
        double k1 = 1.07 + 900 / reynolds - 0.63 / (1 + 10 * prandtl);
        double tube = eighth * reynolds * prandtl / (k1 + 12.7 * Math.sqrt(eighth) * (pr * pr - 1));
        return tube * (1 + inlet * inlet) * wallFactor(wall, diameterRatio);
    }

    private static double wallFactor(AnnulusWall wall, double a) {
        return switch (wall) {
            case INNER -> inner(a);
            case OUTER -> outer(a);
            case BOTH -> (a * inner(a) + outer(a)) / (1 + a);
        };
    }

    private static double inner(double a) {
        return 0.75 * Math.pow(a, -0.17);
    }

    private static double outer(double a) {
        return 0.9 - 0.15 * Math.pow(a, 0.6);
    }
}
