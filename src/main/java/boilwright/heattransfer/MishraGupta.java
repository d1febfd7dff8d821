package boilwright.heattransfer;

/**
 * Friction in a coiled tube, P. Mishra and S. N. Gupta, Ind. Eng. Chem. Process Des. Dev. 18 (1979) 130: laminar flow has 1 +
 * 0.033 (log10 De)^4 times the friction of a straight tube (1 < De < 3000), turbulent flow 0.03 sqrt(d/D) more than a straight
 * tube (4500 < Re < 1e5; 0.0075 as a Fanning factor). 0.003 < d/D < 0.15, pitch up to 25 times the coil's diameter. Between
 * the two the greater counts ({@link SmoothMaximum}): they cross near the critical Reynolds number.
 */
public final class MishraGupta {
    private MishraGupta() {}

    /**
     * Friction of laminar flow over that of a straight tube; 1 below De = 1.
     *
     * @param dean Re sqrt(d/D), at least 0, up to 3000
     */
    public static double laminarRatio(double dean) {
        if (dean <= 1) {
            return 1;
        }
        double log = Math.log10(dean);
        return 1 + 0.033 * log * log * log * log;
    }

    /**
     * Darcy friction factor times Reynolds number over all flow rates, so that more flow always loses more pressure.
     *
     * @param reynolds on the bore, at least 0, up to 1e5
     * @param curvature bore over diameter of the coil's centre line, 0 to 0.15
     * @param relativeRoughness height of the roughness over the bore, 0 to 0.05; enters the turbulent part as in a straight
     *     tube, {@link ChurchillFriction}
     */
    public static double timesReynolds(double reynolds, double curvature, double relativeRoughness) {
        double straight = 64;
        double laminar = straight * laminarRatio(ManlapazChurchill.dean(reynolds, curvature));
        if (reynolds < 1) {
            return laminar;
        }
        double factor = ChurchillFriction.turbulent(reynolds, relativeRoughness) + 0.03 * Math.sqrt(curvature);
        double excess = SmoothMaximum.of(laminar - straight, Math.max(0, factor * reynolds - straight));
        return straight + excess;
    }
}
