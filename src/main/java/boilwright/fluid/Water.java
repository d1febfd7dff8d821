package boilwright.fluid;

import boilwright.units.PhysicalConstants;

/**
 * Liquid water at 0.5 MPa between 0 and 150 degrees Celsius: IAPWS-IF97 (release R7-97) and the IAPWS releases on
 * viscosity and thermal conductivity, tabulated from a published library and read by cubic Hermite interpolation, within
 * 1e-6 of the library. Nothing allocates after the first call. Whether water freezes or boils is judged by temperature and
 * pressure ({@link CoolantState}), because a formula for the liquid would silently answer for ice and steam. Every method
 * takes K and throws {@link boilwright.errors.ComputationException} outside the span.
 */
public final class Water {
    /** Lower end of the tables, K. */
    public static final double LOWEST_K = PhysicalConstants.ZERO_CELSIUS_K;
    /** Upper end of the tables, K. */
    public static final double HIGHEST_K = 423.15;
    /** Freezing point at atmospheric pressure, K; 7 mK lower for each bar more. */
    public static final double FREEZING_K = PhysicalConstants.ZERO_CELSIUS_K;

    /** Heat that melts ice, J/kg. IAPWS R10-06 for ice Ih gives 333.4, handbooks 333.55 to 334 kJ/kg (from memory). */
    public static final double FUSION_HEAT = 333.6e3;

    /** Pressure at which the tables are made: above saturation over the whole span, Pa. */
    static final double TABLE_PRESSURE_PA = 0.5e6;

    private static final String NAME = "water";

    private Water() {}

    /** Water as one of the coolants. */
    public static Coolant coolant() {
        return WaterCoolant.WATER;
    }

    /** Density, kg/m3. */
    public static double density(double temperatureK) {
        check("density", temperatureK);
        return Tables.DENSITY.value(temperatureK);
    }

    /** Specific heat at constant pressure, J/(kg K); exactly the derivative of {@link #enthalpy}. */
    public static double specificHeat(double temperatureK) {
        check("specific heat", temperatureK);
        return Tables.ENTHALPY.slope(temperatureK);
    }

    /** Enthalpy, J/kg, zero at 273.15 K. */
    public static double enthalpy(double temperatureK) {
        check("enthalpy", temperatureK);
        return Tables.ENTHALPY.value(temperatureK);
    }

    /** Dynamic viscosity, Pa s. */
    public static double viscosity(double temperatureK) {
        check("viscosity", temperatureK);
        return Tables.VISCOSITY.value(temperatureK);
    }

    /** Thermal conductivity, W/(m K). */
    public static double conductivity(double temperatureK) {
        check("thermal conductivity", temperatureK);
        return Tables.CONDUCTIVITY.value(temperatureK);
    }

    /** Prandtl number. */
    public static double prandtl(double temperatureK) {
        return viscosity(temperatureK) * specificHeat(temperatureK) / conductivity(temperatureK);
    }

    /** Volume expansion, 1/K; negative below 4 degrees Celsius. */
    public static double expansion(double temperatureK) {
        check("volume expansion", temperatureK);
        return Tables.EXPANSION.value(temperatureK);
    }

    /**
     * Boiling temperature, K; {@link WaterSaturation}, within the pressures for which the tables hold.
     *
     * @param pressurePa absolute pressure, 1 kPa to 0.45 MPa
     */
    public static double boilingTemperature(double pressurePa) {
        double lowest = 1e3;
        double highest = 0.45e6;
        if (!(pressurePa >= lowest && pressurePa <= highest)) {
            throw Outside.pressure(NAME, pressurePa, lowest, highest);
        }
        return WaterSaturation.temperature(pressurePa);
    }

    /** Latent heat of boiling at a boiling temperature, J/kg; IAPWS-IF97, 2257 kJ/kg at 100 degrees Celsius. */
    public static double latentHeat(double temperatureK) {
        check("latent heat", temperatureK);
        return Tables.LATENT_HEAT.value(temperatureK);
    }

    private static void check(String property, double temperatureK) {
        if (!(temperatureK >= LOWEST_K && temperatureK <= HIGHEST_K)) {
            throw Outside.temperature(NAME, property, temperatureK, LOWEST_K, HIGHEST_K);
        }
    }

    /** Read at first use; a few milliseconds. */
    private static final class Tables {
        private static final WaterTable FILE = WaterTable.read();
        private static final HermiteTable DENSITY = table(WaterTable.DENSITY);
        private static final HermiteTable VISCOSITY = table(WaterTable.VISCOSITY);
        private static final HermiteTable CONDUCTIVITY = table(WaterTable.CONDUCTIVITY);
        private static final HermiteTable EXPANSION = table(WaterTable.EXPANSION);
        private static final HermiteTable LATENT_HEAT = table(WaterTable.LATENT_HEAT);
        private static final HermiteTable ENTHALPY = new HermiteTable(
                LOWEST_K, HIGHEST_K, FILE.column(WaterTable.ENTHALPY), FILE.column(WaterTable.SPECIFIC_HEAT));

        private static HermiteTable table(int column) {
            return new HermiteTable(LOWEST_K, HIGHEST_K, FILE.column(column));
        }
    }
}
