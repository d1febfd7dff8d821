package boilwright.heattransfer;

/**
 * Mean Nusselt number of a concentric annular gap over all flow rates, continuous and never falling with the Reynolds
 * number: {@link LaminarAnnulus} up to 2300, linear to {@link AnnulusTurbulent} at 4000 (as V. Gnielinski, Int. J. Heat Mass
 * Transfer 63 (2013) 134, does for tubes; for gaps the VDI Heat Atlas goes to 1e4), never below a floor for natural
 * convection. Where the laminar inlet term at 2300 exceeds the turbulent value the larger one is kept (own choice, to keep
 * the order). 0 <= Re <= 1e6, 0.6 <= Pr <= 1000, dh/L <= 1.
 */
public final class AnnulusFlow {
    private AnnulusFlow() {}

    /**
     * Mean Nusselt number on the hydraulic diameter do - di.
     *
     * @param wall which wall passes heat
     * @param diameterRatio di/do, above 0 to 1
     * @param reynolds on the hydraulic diameter, at least 0
     * @param prandtl 0.6 to 1000
     * @param diameterOverLength dh/L, 0 to 1
     * @param floor Nusselt number of natural convection alone, h dh/k; 0 for none
     */
    public static double nusselt(
            AnnulusWall wall,
            double diameterRatio,
            double reynolds,
            double prandtl,
            double diameterOverLength,
            double floor) {
        return Math.max(floor, forced(wall, diameterRatio, reynolds, prandtl, diameterOverLength));
    }

    private static double forced(AnnulusWall wall, double a, double reynolds, double prandtl, double dOverL) {
        double graetzPerReynolds = prandtl * dOverL;
        if (reynolds <= FlowRegimes.LAMINAR_END) {
            return LaminarAnnulus.meanNusselt(wall, a, reynolds * graetzPerReynolds);
        }
        double laminarEnd = LaminarAnnulus.meanNusselt(wall, a, FlowRegimes.LAMINAR_END * graetzPerReynolds);
        if (FlowRegimes.isTransitional(reynolds)) {
            double start = AnnulusTurbulent.meanNusselt(wall, a, FlowRegimes.TURBULENT_START, prandtl, dOverL);
            return FlowRegimes.between(reynolds, laminarEnd, Math.max(laminarEnd, start));
        }
        return Math.max(laminarEnd, AnnulusTurbulent.meanNusselt(wall, a, reynolds, prandtl, dOverL));
    }
}
