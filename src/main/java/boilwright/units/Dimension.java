package boilwright.units;

/** What a quantity measures; each has one SI unit in which the program computes. */
public enum Dimension {
    LENGTH("m"),
    AREA("m2"),
    VOLUME("m3"),
    TIME("s"),
    MASS("kg"),
    MASS_FLOW("kg/s"),
    VOLUME_FLOW("m3/s"),
    PRESSURE("Pa"),
    TEMPERATURE("K"),
    TEMPERATURE_DIFFERENCE("K"),
    POWER("W"),
    HEAT_FLUX("W/m2"),
    HEAT_CAPACITY("J/K"),
    SPECIFIC_HEAT("J/(kg K)"),
    SPECIFIC_ENERGY("J/kg"),
    HEAT_TRANSFER_COEFFICIENT("W/(m2 K)"),
    THERMAL_CONDUCTIVITY("W/(m K)"),
    THERMAL_CONDUCTANCE("W/K"),
    DENSITY("kg/m3"),
    DYNAMIC_VISCOSITY("Pa s"),
    SURFACE_TENSION("N/m"),
    EXPANSION("1/K"),
    MOLAR_MASS("kg/mol"),
    FRACTION("1");

    private final String siUnit;

    Dimension(String siUnit) {
        this.siUnit = siUnit;
    }

    /** The SI unit in which the program computes, as people write it. */
    public String siUnit() {
        return siUnit;
    }
}
