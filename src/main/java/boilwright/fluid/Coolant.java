package boilwright.fluid;

/**
 * A liquid that carries heat away: water, or glycol in water. Temperatures in K; a property asked outside the span is
 * refused with a {@link boilwright.errors.ComputationException}. Nothing allocates in the property methods.
 */
public interface Coolant {
    /** What it is, for people: "water" or "ethylene glycol in water, 30 percent by mass". */
    String title();

    /** Lower end of the span of every property, K; never below freezing. */
    double lowestK();

    /** Upper end of the span of every property, K. */
    double highestK();

    /** Density, kg/m3. */
    double density(double temperatureK);

    /** Specific heat at constant pressure, J/(kg K); exactly the derivative of {@link #enthalpy}. */
    double specificHeat(double temperatureK);

    /** Enthalpy, J/kg, zero at 273.15 K. */
    double enthalpy(double temperatureK);

    /** Dynamic viscosity, Pa s. */
    double viscosity(double temperatureK);

    /** Thermal conductivity, W/(m K). */
    double conductivity(double temperatureK);

    /** Volume expansion, 1/K; negative where the liquid shrinks on warming. */
    double expansion(double temperatureK);

    /** Prandtl number. */
    default double prandtl(double temperatureK) {
        return viscosity(temperatureK) * specificHeat(temperatureK) / conductivity(temperatureK);
    }

    /** Temperature at which the first ice forms at atmospheric pressure, K. */
    double freezingK();

    /**
     * Temperature below which it cannot boil, K: the boiling point of water, which a mixture with glycol exceeds.
     *
     * @param pressurePa absolute pressure, 611.213 Pa to 22.064 MPa; NaN outside
     */
    default double boilingK(double pressurePa) {
        return WaterSaturation.temperature(pressurePa);
    }
}
