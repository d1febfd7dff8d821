package boilwright.gasflow;

import boilwright.units.PhysicalConstants;

/**
 * Gases met in a vacuum line. Viscosity by Sutherland's law, eta0 (T/T0)^1.5 (T0 + S)/(T + S), with the constants of F. M.
 * White, Viscous Fluid Flow, table 1-2 (from memory, 2 to 4 % between 200 and 1000 K; water vapour 280 to 1500 K).
 */
public enum Gas {
    AIR("air", 0.028965, 1.716e-5, PhysicalConstants.ZERO_CELSIUS_K, 111),
    NITROGEN("nitrogen", 0.028013, 1.663e-5, PhysicalConstants.ZERO_CELSIUS_K, 107),
    WATER_VAPOUR("water-vapour", 0.018015, 1.12e-5, 350, 1064),
    HYDROGEN("hydrogen", 0.002016, 8.411e-6, PhysicalConstants.ZERO_CELSIUS_K, 97),
    HELIUM("helium", 0.0040026, 1.87e-5, PhysicalConstants.ZERO_CELSIUS_K, 79.4),
    ARGON("argon", 0.039948, 2.125e-5, PhysicalConstants.ZERO_CELSIUS_K, 144),
    CARBON_DIOXIDE("carbon-dioxide", 0.04401, 1.370e-5, PhysicalConstants.ZERO_CELSIUS_K, 222);

    private final String id;
    private final double molarMass;
    private final double viscosity;
    private final double atK;
    private final double sutherlandK;

    Gas(String id, double molarMass, double viscosity, double atK, double sutherlandK) {
        this.id = id;
        this.molarMass = molarMass;
        this.viscosity = viscosity;
        this.atK = atK;
        this.sutherlandK = sutherlandK;
    }

    /** How files and options spell it. */
    public String id() {
        return id;
    }

    /** Molar mass, kg/mol. */
    public double molarMass() {
        return molarMass;
    }

    /**
     * Dynamic viscosity at low density.
     *
     * @param temperatureK K
     * @return Pa s
     */
    public double viscosity(double temperatureK) {
        double ratio = temperatureK / atK;
        return viscosity * ratio * Math.sqrt(ratio) * (atK + sutherlandK) / (temperatureK + sutherlandK);
    }

    /** Conductance of an opening in molecular flow over its area, cbar/4, m/s. */
    public double aperture(double temperatureK) {
        return MeanSpeed.of(temperatureK, molarMass) / 4;
    }
}
