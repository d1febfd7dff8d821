package boilwright.fluid;

import boilwright.units.PhysicalConstants;

/**
 * The line on which water boils: IAPWS R7-97 (industrial formulation 1997), region 4, equation 31. It is valid from
 * 273.15 K and 611.213 Pa to the critical point, 647.096 K and 22.064 MPa; beyond, it gives NaN. The constants
 * reproduce table 36 of the release to its last digit.
 */
public final class WaterSaturation {
    /** Lower end of the range, K. */
    public static final double LOWEST_K = PhysicalConstants.ZERO_CELSIUS_K;
    /** Upper end of the range, K: the critical temperature. */
    public static final double HIGHEST_K = 647.096;
    /** Lower end of the range, Pa: where water boils at 273.15 K, rounded outwards. */
    public static final double LOWEST_PA = 611.2126;
    /** Upper end of the range, Pa: the critical pressure. */
    public static final double HIGHEST_PA = 22.064e6;

    private static final double UNIT_PA = 1e6;
    private static final double N1 = 0.11670521452767e4;
    private static final double N2 = -0.72421316703206e6;
    private static final double N3 = -0.17073846940092e2;
    private static final double N4 = 0.12020824702470e5;
    private static final double N5 = -0.32325550322333e7;
    private static final double N6 = 0.14915108613530e2;
    private static final double N7 = -0.48232657361591e4;
    private static final double N8 = 0.40511340542057e6;
    private static final double N9 = -0.23855557567849;
    private static final double N10 = 0.65017534844798e3;

    private WaterSaturation() {}

    /**
     * Temperature at which water boils, K; equation 31.
     *
     * @param pressurePa absolute pressure, 611.213 Pa to 22.064 MPa
     */
    public static double temperature(double pressurePa) {
        if (!(pressurePa >= LOWEST_PA && pressurePa <= HIGHEST_PA)) {
            return Double.NaN;
        }
        double beta = Math.sqrt(Math.sqrt(pressurePa / UNIT_PA));
        double e = (beta + N3) * beta + N6;
        double f = (N1 * beta + N4) * beta + N7;
        double g = (N2 * beta + N5) * beta + N8;
        double d = 2 * g / (-f - Math.sqrt(f * f - 4 * e * g));
        double sum = N10 + d;
        return (sum - Math.sqrt(sum * sum - 4 * (N9 + N10 * d))) / 2;
    }
}
