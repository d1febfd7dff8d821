package boilwright.gasflow;

/** What a burner's cartridge of n-butane needs: vapour pressure, latent heat, heat capacity and heating values. */
public final class ButaneProperties {
    /** Molar mass, kg/mol. */
    public static final double MOLAR_MASS = 0.0581222;
    /** Least temperature of the vapour pressure, K. */
    public static final double VAPOUR_PRESSURE_MIN_K = 196;
    /** Greatest temperature of the vapour pressure as used here, K. */
    public static final double VAPOUR_PRESSURE_MAX_K = 330;
    /** Latent heat at 20 C, J/kg; from memory. */
    public static final double LATENT_HEAT_20C = 366e3;
    /** Specific heat of the liquid near 20 C, J/(kg K); from memory. */
    public static final double LIQUID_SPECIFIC_HEAT = 2400;
    /** Enthalpy of combustion at 25 C to liquid water, J/mol (NIST Chemistry WebBook, from memory). */
    public static final double COMBUSTION_ENTHALPY = 2877.6e3;
    /** Enthalpy of vaporisation of water at 25 C, J/mol (NIST Chemistry WebBook, from memory). */
    public static final double WATER_VAPORISATION = 44.01e3;
    /** Gross heating value, J/kg: 49.5 MJ/kg. Burner ratings are on this value. */
    public static final double GROSS_HEATING_VALUE = COMBUSTION_ENTHALPY / MOLAR_MASS;
    /** Net heating value, J/kg: 45.72 MJ/kg; five moles of water stay vapour. */
    public static final double NET_HEATING_VALUE = (COMBUSTION_ENTHALPY - 5 * WATER_VAPORISATION) / MOLAR_MASS;

    private static final double CRITICAL_K = 425.12;
    private static final double WATSON = 0.38;
    private static final double CELSIUS_20 = 293.15;
    private static final double EXTENSION_FROM_K = 288;

    private ButaneProperties() {}

    /**
     * Vapour pressure of n-butane: Antoine's equation with the extended term above 288 K, constants of J. Dykyj, J. Svoboda, R.
     * C. Wilhoit, M. Frenkel, K. R. Hall, Vapor Pressure of Chemicals, Landolt-Boernstein IV/20A (1999), the same as in B. E.
     * Poling, J. M. Prausnitz, J. P. O'Connell, The Properties of Gases and Liquids, 5th ed., appendix A (both as quoted in
     * other works). One equation for the whole span of a cartridge; the two sets of constants usual elsewhere meet
     * near the boiling point with a step of 1.7 %. The two highest terms are below 1e-5 up to 330 K and are left out.
     *
     * @param temperatureK 196 to 330 K
     * @return Pa; NaN outside the range
     */
    public static double vapourPressure(double temperatureK) {
        if (!(temperatureK >= VAPOUR_PRESSURE_MIN_K && temperatureK <= VAPOUR_PRESSURE_MAX_K)) {
            return Double.NaN;
        }
        double log10 = 8.93266 - 935.773 / (temperatureK - 34.361);
        if (temperatureK > EXTENSION_FROM_K) {
            log10 += 0.43429 * Math.pow((temperatureK - EXTENSION_FROM_K) / CRITICAL_K, 2.14767);
        }
        return Math.pow(10, log10);
    }

    /**
     * Latent heat of n-butane, the value at 20 C carried to other temperatures by K. M. Watson, Ind. Eng. Chem. 35 (1943) 398:
     * ((Tc - T)/(Tc - 293.15 K))^0.38.
     *
     * @param temperatureK below the critical 425.12 K
     * @return J/kg; NaN above the critical temperature
     */
    public static double latentHeat(double temperatureK) {
        return LATENT_HEAT_20C * Math.pow((CRITICAL_K - temperatureK) / (CRITICAL_K - CELSIUS_20), WATSON);
    }
}
