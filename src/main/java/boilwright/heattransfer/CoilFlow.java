package boilwright.heattransfer;

/**
 * Mean Nusselt number of a coiled tube over all flow rates, continuous and never falling with the Reynolds number, so that
 * more water never makes a wall hotter. Laminar: the greater of {@link ManlapazChurchill} and the straight tube's thermal inlet,
 * {@link LaminarTube}, up to {@link SchmidtCoil#criticalReynolds}; then linear to {@link GnielinskiCoil} at 2.2e4, as the VDI
 * Heat Atlas, part G3, does; never below a floor for natural convection. Values meet in a {@link SmoothMaximum}. 0 <= Re <=
 * 1.5e5, 0.7 <= Pr <= 500, d/D <= 0.2.
 */
public final class CoilFlow {
    private CoilFlow() {}

    /**
     * Mean Nusselt number on the bore.
     *
     * @param reynolds on the bore, at least 0
     * @param prandtl 0.7 to 500
     * @param curvature bore over diameter of the coil's centre line, 0 to 0.2
     * @param diameterOverLength bore over length of the tube, 0 to 1
     * @param floor Nusselt number of natural convection alone, h d/k; 0 for none
     */
    public static double nusselt(
            double reynolds, double prandtl, double curvature, double diameterOverLength, double floor) {
        return SmoothMaximum.of(floor, forced(reynolds, prandtl, curvature, diameterOverLength));
    }

    private static double forced(double reynolds, double prandtl, double curvature, double dOverL) {
        double critical = SchmidtCoil.criticalReynolds(curvature);
        if (reynolds <= critical) {
            return laminar(reynolds, prandtl, curvature, dOverL);
        }
        double end = laminar(critical, prandtl, curvature, dOverL);
        if (reynolds >= GnielinskiCoil.REYNOLDS_MIN) {
            return Math.max(end, GnielinskiCoil.nusselt(reynolds, prandtl, curvature));
        }
        double start = Math.max(end, GnielinskiCoil.nusselt(GnielinskiCoil.REYNOLDS_MIN, prandtl, curvature));
        double share = (reynolds - critical) / (GnielinskiCoil.REYNOLDS_MIN - critical);
        return (1 - share) * end + share * start;
    }

    private static double laminar(double reynolds, double prandtl, double curvature, double dOverL) {
        double developed = ManlapazChurchill.nusselt(ManlapazChurchill.dean(reynolds, curvature), prandtl);
        // both are 3.66 without flow: only what the inlet adds may count
        double inlet = LaminarTube.meanNusselt(reynolds * prandtl * dOverL) - LaminarTube.DEVELOPED_TEMPERATURE;
        double swirl = developed - ManlapazChurchill.nusselt(0, prandtl);
        return LaminarTube.DEVELOPED_TEMPERATURE + SmoothMaximum.of(Math.max(0, inlet), Math.max(0, swirl));
    }
}
