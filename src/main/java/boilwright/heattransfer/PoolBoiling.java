package boilwright.heattransfer;

/**
 * Boiling of a pump fluid at the boiler's wall, h_b = 500 W/(m2 K) (q/44 kW/m2)^0.67. From memory and engineering
 * judgement: the exponent is that of nucleate boiling (near 2/3 in most published relations), the level is for heavy
 * organic liquids at about 1 Torr, good to a factor of two. No published figure for pump oils at such pressure is known.
 */
public final class PoolBoiling {
    /** Coefficient at the reference flux, W/(m2 K); from memory. */
    public static final double REFERENCE_COEFFICIENT = 500;
    /** Reference flux, W/m2; from memory. */
    public static final double REFERENCE_FLUX = 44e3;
    /** Exponent of the flux; from memory. */
    public static final double EXPONENT = 0.67;

    // h = H (h dT/Q)^n  =>  h = (H (dT/Q)^n)^(1/(1-n)) = level * dT^(n/(1-n))
    private static final double SUPERHEAT_EXPONENT = EXPONENT / (1 - EXPONENT);
    private static final double SUPERHEAT_LEVEL =
            Math.pow(REFERENCE_COEFFICIENT * Math.pow(REFERENCE_FLUX, -EXPONENT), 1 / (1 - EXPONENT));

    private PoolBoiling() {}

    /**
     * Coefficient from the flux through the wetted area.
     *
     * @param flux W/m2; at or below 0 (wall colder than the liquid) nothing boils and the result is 0
     * @return W/(m2 K)
     */
    public static double coefficient(double flux) {
        return flux <= 0 ? 0 : REFERENCE_COEFFICIENT * Math.pow(flux / REFERENCE_FLUX, EXPONENT);
    }

    /**
     * Natural convection and boiling together without a switch, (h_nc^4 + h_b^4)^(1/4) (the blend of S. W. Churchill and
     * R. Usagi, AIChE J. 18 (1972) 1121; the exponent 4 is engineering judgement).
     *
     * @param naturalConvection W/(m2 K), at least 0
     * @param boiling W/(m2 K), at least 0
     * @return W/(m2 K)
     */
    public static double withNaturalConvection(double naturalConvection, double boiling) {
        double n2 = naturalConvection * naturalConvection;
        double b2 = boiling * boiling;
        return Math.sqrt(Math.sqrt(n2 * n2 + b2 * b2));
    }
}
