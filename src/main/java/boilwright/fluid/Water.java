package boilwright.fluid;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import java.util.function.DoubleUnaryOperator;

/**
 * Liquid water at 0.5 MPa between 0 and 150 degrees Celsius: IAPWS-IF97 (release R7-97) and the IAPWS releases on
 * viscosity and thermal conductivity through a published library, tabulated once at first use and read by cubic Hermite
 * interpolation, within 1e-6 of the library. Nothing allocates after the first call. Whether water freezes or boils is
 * judged here by temperature and pressure, because the library would silently answer for steam. Every method takes K and
 * throws {@link boilwright.errors.ComputationException} outside the span.
 */
public final class Water {
    /** Lower end of the tables, K. */
    public static final double LOWEST_K = 273.15;
    /** Upper end of the tables, K. */
    public static final double HIGHEST_K = 423.15;
    /** Freezing point at atmospheric pressure, K. */
    public static final double FREEZING_K = 273.15;

    /** Pressure at which the tables are made: above saturation over the whole span, Pa. */
    static final double TABLE_PRESSURE_PA = 0.5e6;

    private static final String NAME = "water";

    private Water() {}

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
     * Boiling temperature, K; IAPWS-IF97 region 4.
     *
     * @param pressurePa absolute pressure, 1 kPa to 0.45 MPa
     */
    public static double boilingTemperature(double pressurePa) {
        double lowest = 1e3;
        double highest = 0.45e6;
        if (!(pressurePa >= lowest && pressurePa <= highest)) {
            throw Outside.pressure(NAME, pressurePa, lowest, highest);
        }
        try {
            return Tables.LIBRARY.saturationTemperatureP(pressurePa);
        } catch (OutOfRangeException e) {
            throw new IllegalStateException("the library refused a pressure of region 4", e);
        }
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

    /** Made at first use; about 15 ms. */
    private static final class Tables {
        private static final int INTERVALS = 150;
        private static final IF97 LIBRARY = new IF97(IF97.UnitSystem.SI);
        private static final double ENTHALPY_AT_ZERO =
                at(t -> LIBRARY.specificEnthalpyPT(TABLE_PRESSURE_PA, t)).applyAsDouble(LOWEST_K);

        private static final HermiteTable DENSITY = table(t -> LIBRARY.densityPT(TABLE_PRESSURE_PA, t));
        private static final HermiteTable VISCOSITY = table(t -> LIBRARY.dynamicViscosityPT(TABLE_PRESSURE_PA, t));
        private static final HermiteTable CONDUCTIVITY =
                table(t -> LIBRARY.thermalConductivityPT(TABLE_PRESSURE_PA, t));
        private static final HermiteTable EXPANSION =
                table(t -> LIBRARY.isobaricCubicExpansionCoefficientPT(TABLE_PRESSURE_PA, t));
        private static final HermiteTable LATENT_HEAT =
                table(t -> LIBRARY.specificEnthalpySaturatedVapourT(t) - LIBRARY.specificEnthalpySaturatedLiquidT(t));
        private static final HermiteTable ENTHALPY = HermiteTable.of(
                LOWEST_K,
                HIGHEST_K,
                INTERVALS,
                at(t -> LIBRARY.specificEnthalpyPT(TABLE_PRESSURE_PA, t) - ENTHALPY_AT_ZERO),
                at(t -> LIBRARY.isobaricHeatCapacityPT(TABLE_PRESSURE_PA, t)));

        private static HermiteTable table(OfTemperature property) {
            return HermiteTable.of(LOWEST_K, HIGHEST_K, INTERVALS, at(property));
        }

        private static DoubleUnaryOperator at(OfTemperature property) {
            return t -> {
                try {
                    return property.value(t);
                } catch (OutOfRangeException e) {
                    throw new IllegalStateException("the library refused a temperature of the table: " + t, e);
                }
            };
        }
    }

    /** A property of the library, which answers outside its regions with a checked exception. */
    private interface OfTemperature {
        double value(double temperatureK) throws OutOfRangeException;
    }
}
