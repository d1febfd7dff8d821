package boilwright.heattransfer;

/**
 * A stream that passes a wall of even temperature, exactly: effectiveness 1 - exp(-NTU), NTU = U A/(m cp) (Incropera, Bergman,
 * Lavine, DeWitt, eq. 11.35a; W. M. Kays and A. L. London, Compact Heat Exchangers, for one side of endless capacity). Constant
 * properties along the wall.
 */
public final class EffectivenessNtu {
    private EffectivenessNtu() {}

    /**
     * Share of the possible heat that the stream takes up, 0 to 1.
     *
     * @param ntu conductance over heat capacity rate, at least 0; may be infinite
     */
    public static double effectiveness(double ntu) {
        return -Math.expm1(-ntu);
    }

    /**
     * Heat from the wall to the stream, W; 0 when nothing flows.
     *
     * @param conductance h A between wall and stream, W/K, at least 0
     * @param capacityRate m cp of the stream, W/K, at least 0
     * @param wallK temperature of the wall, K
     * @param inletK temperature of the stream before it, K
     */
    public static double heat(double conductance, double capacityRate, double wallK, double inletK) {
        if (capacityRate == 0) {
            return 0;
        }
        return capacityRate * effectiveness(conductance / capacityRate) * (wallK - inletK);
    }

    /**
     * Temperature of the stream behind the wall, K; that of the wall when nothing flows.
     *
     * @param conductance W/K, at least 0
     * @param capacityRate W/K, at least 0
     * @param wallK K
     * @param inletK K
     */
    public static double outlet(double conductance, double capacityRate, double wallK, double inletK) {
        if (capacityRate == 0) {
            return wallK;
        }
        return wallK - (wallK - inletK) * Math.exp(-conductance / capacityRate);
    }

    /**
     * Mean temperature of the stream along the wall, K: the one that gives the same heat with the full conductance.
     *
     * @param conductance W/K, at least 0
     * @param capacityRate W/K, above 0
     * @param wallK K
     * @param inletK K
     */
    public static double mean(double conductance, double capacityRate, double wallK, double inletK) {
        double ntu = conductance / capacityRate;
        return ntu == 0 ? inletK : wallK - (wallK - inletK) * effectiveness(ntu) / ntu;
    }
}
