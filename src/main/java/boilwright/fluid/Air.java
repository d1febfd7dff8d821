package boilwright.fluid;

import boilwright.units.PhysicalConstants;

/**
 * Dry air at one atmosphere between 250 and 900 K: density as an ideal gas, viscosity and thermal conductivity by
 * Sutherland's law with the constants of White, Viscous Fluid Flow (3rd ed. 2006), tables 1-2 and 1-3 (from memory),
 * specific heat by a cubic through Incropera's table A.4 (from memory). Against that table viscosity is within 2.1 percent,
 * conductivity within 1.6 and the Prandtl number within 1.5. Nothing allocates. Temperatures in K; outside the span every
 * property is refused with a {@link boilwright.errors.ComputationException}.
 */
public final class Air {
    /** Lower end of the span, K. */
    public static final double LOWEST_K = 250;
    /** Upper end of the span, K. */
    public static final double HIGHEST_K = 900;
    /** Specific gas constant, J/(kg K): the molar gas constant over 0.028965 kg/mol. */
    public static final double SPECIFIC_GAS_CONSTANT = 287.05;

    private static final double SUTHERLAND_T0 = 273;
    private static final double VISCOSITY_0 = 1.716e-5;
    private static final double VISCOSITY_S = 111;
    private static final double CONDUCTIVITY_0 = 0.0241;
    private static final double CONDUCTIVITY_S = 194;
    private static final double HEAT_0 = 1056.22;
    private static final double HEAT_1 = -0.400561;
    private static final double HEAT_2 = 9.09908e-4;
    private static final double HEAT_3 = -4.27945e-7;
    private static final String NAME = "air";

    private Air() {}

    /** Density at one atmosphere, kg/m3. */
    public static double density(double temperatureK) {
        check("density", temperatureK);
        return PhysicalConstants.STANDARD_ATMOSPHERE_PA / (SPECIFIC_GAS_CONSTANT * temperatureK);
    }

    /** Dynamic viscosity, Pa s. */
    public static double viscosity(double temperatureK) {
        check("viscosity", temperatureK);
        return sutherland(temperatureK, VISCOSITY_0, VISCOSITY_S);
    }

    /** Thermal conductivity, W/(m K). */
    public static double conductivity(double temperatureK) {
        check("thermal conductivity", temperatureK);
        return sutherland(temperatureK, CONDUCTIVITY_0, CONDUCTIVITY_S);
    }

    /** Specific heat at constant pressure, J/(kg K). */
    public static double specificHeat(double temperatureK) {
        check("specific heat", temperatureK);
        return HEAT_0 + temperatureK * (HEAT_1 + temperatureK * (HEAT_2 + temperatureK * HEAT_3));
    }

    /** Prandtl number. */
    public static double prandtl(double temperatureK) {
        return viscosity(temperatureK) * specificHeat(temperatureK) / conductivity(temperatureK);
    }

    private static double sutherland(double t, double atT0, double s) {
        double ratio = t / SUTHERLAND_T0;
        return atT0 * ratio * Math.sqrt(ratio) * (SUTHERLAND_T0 + s) / (t + s);
    }

    private static void check(String property, double temperatureK) {
        if (!(temperatureK >= LOWEST_K && temperatureK <= HIGHEST_K)) {
            throw Outside.temperature(NAME, property, temperatureK, LOWEST_K, HIGHEST_K);
        }
    }
}
