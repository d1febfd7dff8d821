package boilwright.fluid;

import boilwright.units.PhysicalConstants;

/**
 * The temperature below which a surface in humid air becomes wet, by the Magnus form of the saturation pressure over water,
 * 610.94 Pa exp(17.625 t/(t + 243.04 degC)) (O. A. Alduchov and R. E. Eskridge, J. Appl. Meteorology 35 (1996) 601, eq. 21).
 * Published for -40 to 50 degrees Celsius, where the pressure is within 0.4 percent; at 60 degrees it is 0.6 percent above
 * IAPWS.
 */
public final class DewPoint {
    private static final double AT_ZERO_PA = 610.94;
    /** Highest temperature of the fit, K. */
    public static final double HIGHEST_K = 323.15;

    private static final double SLOPE = 17.625;
    private static final double OFFSET = 243.04;

    private DewPoint() {}

    /**
     * Pressure of water vapour over water, Pa.
     *
     * @param temperatureK 233.15 to 323.15 K
     */
    public static double saturationPressure(double temperatureK) {
        return AT_ZERO_PA * Math.exp(exponent(temperatureK));
    }

    /**
     * Dew point, K; equal to the air's temperature at humidity 1.
     *
     * @param airK air temperature, 233.15 to 323.15 K
     * @param relativeHumidity above 0 to 1
     */
    public static double temperature(double airK, double relativeHumidity) {
        double sum = Math.log(relativeHumidity) + exponent(airK);
        return PhysicalConstants.ZERO_CELSIUS_K + OFFSET * sum / (SLOPE - sum);
    }

    private static double exponent(double temperatureK) {
        double celsius = temperatureK - PhysicalConstants.ZERO_CELSIUS_K;
        return SLOPE * celsius / (celsius + OFFSET);
    }
}
