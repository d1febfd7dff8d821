package boilwright.heattransfer;

/**
 * Mean Nusselt number of a straight round tube over all flow rates, continuous and never falling with the Reynolds number,
 * so that more water can never make a wall hotter: {@link LaminarTube} up to 2300, linear to {@link Gnielinski} at 4000
 * (V. Gnielinski, Int. J. Heat Mass Transfer 63 (2013) 134), never below a floor for natural convection. In very short tubes
 * the laminar inlet term at 2300 can exceed the turbulent value; the larger one is then kept (own choice, to keep the
 * order). 0 <= Re <= 1e6, 0.6 <= Pr <= 1000, d/L <= 1.
 */
public final class TubeFlow {
    private TubeFlow() {}

    /**
     * Mean Nusselt number on the bore.
     *
     * @param reynolds on the bore, at least 0
     * @param prandtl 0.6 to 1000
     * @param diameterOverLength d/L, 0 to 1
     * @param floor Nusselt number of natural convection alone, h d/k; 0 for none
     */
    public static double nusselt(double reynolds, double prandtl, double diameterOverLength, double floor) {
        return Math.max(floor, forced(reynolds, prandtl, diameterOverLength));
    }

    private static double forced(double reynolds, double prandtl, double diameterOverLength) {
        double graetzPerReynolds = prandtl * diameterOverLength;
        if (reynolds <= FlowRegimes.LAMINAR_END) {
            return LaminarTube.meanNusselt(reynolds * graetzPerReynolds);
        }
        double laminarEnd = LaminarTube.meanNusselt(FlowRegimes.LAMINAR_END * graetzPerReynolds);
        if (FlowRegimes.isTransitional(reynolds)) {
            double start = Gnielinski.meanNusselt(FlowRegimes.TURBULENT_START, prandtl, diameterOverLength);
            return FlowRegimes.between(reynolds, laminarEnd, Math.max(laminarEnd, start));
        }
        return Math.max(laminarEnd, Gnielinski.meanNusselt(reynolds, prandtl, diameterOverLength));
    }
}
