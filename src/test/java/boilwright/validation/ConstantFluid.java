package boilwright.validation;

import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import java.util.OptionalDouble;

/**
 * A made-up fluid with one latent heat and one specific heat, whose films conduct so well that the wall stands at the
 * vapour's temperature: what exact solutions of condensation suppose.
 *
 * @param boilingK temperature at which its vapour pressure is 1000 Pa, K
 * @param latentJPerKg latent heat, J/kg
 * @param specificHeatJPerKgK specific heat of the liquid, J/(kg K)
 */
record ConstantFluid(double boilingK, double latentJPerKg, double specificHeatJPerKgK) implements WorkingFluid {
    static final double BOILING_PA = 1000;
    private static final double MOLAR_MASS = 0.484;
    private static final double GAS_CONSTANT = 8.314462618 / MOLAR_MASS;

    TabulatedFluid tabulated() {
        return new TabulatedFluid(this, 280, boilingK + 60);
    }

    private double slopeK() {
        return latentJPerKg / GAS_CONSTANT;
    }

    @Override
    public String id() {
        return "constant";
    }

    @Override
    public String title() {
        return "constant fluid";
    }

    @Override
    public double molarMass() {
        return MOLAR_MASS;
    }

    @Override
    public double specificGasConstant() {
        return GAS_CONSTANT;
    }

    @Override
    public double heatCapacityRatio() {
        return 1.03;
    }

    @Override
    public double vapourViscosity() {
        return 8e-6;
    }

    @Override
    public double vapourPressure(double temperatureK) {
        return BOILING_PA * Math.exp(slopeK() * (1 / boilingK - 1 / temperatureK));
    }

    @Override
    public double vapourPressureSlope(double temperatureK) {
        return vapourPressure(temperatureK) * slopeK() / (temperatureK * temperatureK);
    }

    @Override
    public double saturationTemperature(double pressurePa) {
        return 1 / (1 / boilingK - Math.log(pressurePa / BOILING_PA) / slopeK());
    }

    @Override
    public double latentHeat(double temperatureK) {
        return latentJPerKg;
    }

    @Override
    public double liquidEnthalpy(double temperatureK) {
        return specificHeatJPerKgK * (temperatureK - 273.15);
    }

    @Override
    public double liquidSpecificHeat(double temperatureK) {
        return specificHeatJPerKgK;
    }

    @Override
    public double liquidDensity(double temperatureK) {
        return 900;
    }

    @Override
    public double liquidExpansion(double temperatureK) {
        return 8e-4;
    }

    @Override
    public double liquidConductivity(double temperatureK) {
        return 1e4;
    }

    @Override
    public double liquidViscosity(double temperatureK) {
        return 1e-3;
    }

    @Override
    public double surfaceTension(double temperatureK) {
        return 0.02;
    }

    @Override
    public double usualBoilerPressure() {
        return 65;
    }

    @Override
    public double[] usualBoilerPressureRange() {
        return new double[] {65, 270};
    }

    @Override
    public OptionalDouble bulkLimit() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble filmLimit() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble airAdmissionLimit() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble dissolvedAir() {
        return OptionalDouble.empty();
    }

    @Override
    public boolean resistsOxidation() {
        return true;
    }

    @Override
    public boolean isToxicVapour() {
        return false;
    }
}
