package boilwright.units;

import java.util.Locale;
import java.util.ResourceBundle;

/** What a quantity measures; each has one SI unit in which the program computes. */
public enum Dimension {
    LENGTH("m"),
    AREA("m2"),
    VOLUME("m3"),
    TIME("s"),
    MASS("kg"),
    MASS_FLOW("kg/s"),
    VOLUME_FLOW("m3/s"),
    SPEED("m/s"),
    /** Pressure of gas, vapour or water, and mechanical stress. */
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
    /** Pressure times volume a second: how a flow of gas at the room's temperature is counted. */
    GAS_FLOW("Pa m3/s"),
    ANGLE("rad"),
    FRACTION("1");

    private final String siUnit;

    Dimension(String siUnit) {
        this.siUnit = siUnit;
    }

    /** The SI unit in which the program computes, as people write it. */
    public String siUnit() {
        return siUnit;
    }

    /** What it measures, in words with their article, for the middle of a sentence: "a pressure". */
    public String inWords() {
        return Words.TEXT.getString(bundleKey());
    }

    /** A quantity of this dimension as people write it, for a message that shows how: "50 mTorr". */
    public String example() {
        return Words.TEXT.getString(bundleKey() + ".example");
    }

    private String bundleKey() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Apart, so that the words are only read when something has to be said. */
    private static final class Words {
        private static final ResourceBundle TEXT = ResourceBundle.getBundle("boilwright.text.dimensions", Locale.ROOT);
    }
}
