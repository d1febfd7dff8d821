package boilwright.fluid;

import java.util.OptionalDouble;

/**
 * A working fluid of a vapour-jet pump: what the model needs of it, in SI, temperatures in K. Implementations never
 * allocate in the temperature-dependent methods.
 */
public interface WorkingFluid {
    /** Id by which rigs name it. */
    String id();

    /** Name that people read. */
    String title();

    /** Molar mass, kg/mol. */
    double molarMass();

    /** Specific gas constant of the vapour, J/(kg K). */
    double specificGasConstant();

    /** Ratio of heat capacities of the vapour. */
    double heatCapacityRatio();

    /** Viscosity of the vapour, Pa s. */
    double vapourViscosity();

    /** Saturation pressure, Pa. */
    double vapourPressure(double temperatureK);

    /** Slope of the saturation pressure, Pa/K. */
    double vapourPressureSlope(double temperatureK);

    /** Temperature at which the saturation pressure is the given one, K. */
    double saturationTemperature(double pressurePa);

    /** Heat of vaporisation, J/kg. */
    double latentHeat(double temperatureK);

    /** Enthalpy of the liquid, J/kg: the integral of its specific heat from 273.15 K. */
    double liquidEnthalpy(double temperatureK);

    /** Specific heat of the liquid, J/(kg K); exactly the derivative of {@link #liquidEnthalpy}. */
    double liquidSpecificHeat(double temperatureK);

    /** Density of the liquid, kg/m3. */
    double liquidDensity(double temperatureK);

    /** Volume expansion of the liquid, 1/K. */
    double liquidExpansion(double temperatureK);

    /** Thermal conductivity of the liquid, W/(m K). */
    double liquidConductivity(double temperatureK);

    /** Dynamic viscosity of the liquid, Pa s. */
    double liquidViscosity(double temperatureK);

    /** Surface tension of the liquid, N/m. */
    double surfaceTension(double temperatureK);

    /** Boiler pressure that jets for this fluid are usually designed for, Pa. */
    double usualBoilerPressure();

    /** Low and high end of what is usual for that pressure, Pa. */
    double[] usualBoilerPressureRange();

    /** Highest recommended bulk temperature, K. */
    OptionalDouble bulkLimit();

    /** Highest temperature of the oil film at a heated wall, K; empty when no figure is known. */
    OptionalDouble filmLimit();

    /** Boiler temperature below which air may be let in, K. */
    OptionalDouble airAdmissionLimit();

    /** Air dissolved in the liquid at 1 atm and room temperature, volume per volume; empty when no figure is known. */
    OptionalDouble dissolvedAir();

    /** True for silicones and ethers, false for hydrocarbons and esters, which burn more readily when hot. */
    boolean resistsOxidation();

    /** True when its vapour is poisonous at room temperature (mercury). */
    boolean isToxicVapour();
}
