package boilwright.fluid;

/** {@link Water} where either water or a mixture may flow. */
enum WaterCoolant implements Coolant {
    WATER;

    @Override
    public String title() {
        return "water";
    }

    @Override
    public double lowestK() {
        return Water.LOWEST_K;
    }

    @Override
    public double highestK() {
        return Water.HIGHEST_K;
    }

    @Override
    public double density(double temperatureK) {
        return Water.density(temperatureK);
    }

    @Override
    public double specificHeat(double temperatureK) {
        return Water.specificHeat(temperatureK);
    }

    @Override
    public double enthalpy(double temperatureK) {
        return Water.enthalpy(temperatureK);
    }

    @Override
    public double viscosity(double temperatureK) {
        return Water.viscosity(temperatureK);
    }

    @Override
    public double conductivity(double temperatureK) {
        return Water.conductivity(temperatureK);
    }

    @Override
    public double expansion(double temperatureK) {
        return Water.expansion(temperatureK);
    }

    @Override
    public double freezingK() {
        return Water.FREEZING_K;
    }
}
