package boilwright.units;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The closed table of unit spellings. A spelling that is not here is refused, never guessed. Spellings are
 * case-sensitive, because mPa and MPa both exist. Factors are exact fractions of decimals; those outside the SI (inch, foot, pound,
 * gallon, standard atmosphere, torr as 1/760 of it, conventional millimetre of mercury, International Table BTU, standard gravity in psi)
 * are those of A. Thompson and B. N. Taylor, NIST Special Publication 811 (2008), appendix B. A gallon is the US one.
 */
public final class UnitTable {
    private static final Map<Dimension, List<UnitSpelling>> BY_DIMENSION = new EnumMap<>(Dimension.class);
    private static final Map<String, List<UnitSpelling>> BY_TEXT = new HashMap<>();

    static {
        mechanical();
        flows();
        pressures();
        thermal();
        properties();
    }

    private UnitTable() {}

    /** Every accepted spelling of a dimension, the usual ones first; never empty. */
    public static List<UnitSpelling> accepted(Dimension dimension) {
        return BY_DIMENSION.get(dimension);
    }

    /** The meanings of a spelling, one per dimension (K is a temperature and a difference); empty when unknown. */
    public static List<UnitSpelling> find(String text) {
        return BY_TEXT.getOrDefault(text, List.of());
    }

    /** The spelling as a unit of one dimension, when it is one. */
    public static Optional<UnitSpelling> find(String text, Dimension dimension) {
        return find(text).stream().filter(unit -> unit.dimension() == dimension).findFirst();
    }

    /**
     * The unit in which people usually read a value of some size, such as kW for 1500 W. Times are in seconds.
     *
     * @param si in the SI unit of the dimension, finite
     */
    public static UnitSpelling usual(double si, Dimension dimension) {
        return DisplayUnit.of(si, dimension);
    }

    private static void mechanical() {
        new Rows(Dimension.LENGTH)
                .si("m")
                .add("0.01", "cm")
                .add("0.001", "mm")
                .add("1e-6", "um")
                .add("0.0254", "in")
                .add("0.3048", "ft")
                .close();
        new Rows(Dimension.AREA)
                .si("m2")
                .add("1e-4", "cm2")
                .add("1e-6", "mm2")
                .add("0.00064516", "in2")
                .close();
        new Rows(Dimension.VOLUME)
                .si("m3")
                .add("0.001", "L")
                .add("1e-6", "mL")
                .add("1e-6", "cm3", "cc")
                // 231 cubic inches
                .add("0.003785411784", "gal")
                .close();
        new Rows(Dimension.TIME).si("s").add("60", "min").add("3600", "h").close();
        new Rows(Dimension.MASS)
                .si("kg")
                .add("0.001", "g")
                .add("0.45359237", "lb")
                .close();
    }

    private static void flows() {
        new Rows(Dimension.VOLUME_FLOW)
                .ratio("0.001", "60", "L/min")
                .add("0.001", "L/s")
                .ratio("0.001", "3600", "L/h")
                .add("1e-6", "mL/s")
                .ratio("1e-6", "60", "mL/min")
                .si("m3/s")
                .ratio("1", "3600", "m3/h")
                // cubic feet a minute
                .ratio("0.028316846592", "60", "CFM")
                .ratio("0.003785411784", "60", "gal/min")
                .close();
        new Rows(Dimension.MASS_FLOW)
                .si("kg/s")
                .add("0.001", "g/s")
                .ratio("0.001", "60", "g/min")
                .ratio("0.001", "3600", "g/h")
                .ratio("1", "3600", "kg/h")
                .close();
        new Rows(Dimension.SPEED)
                .si("m/s")
                .add("0.01", "cm/s")
                .ratio("1000", "3600", "km/h")
                .ratio("0.3048", "60", "ft/min")
                .close();
    }

    private static void pressures() {
        new Rows(Dimension.PRESSURE)
                .si("Pa")
                .add("100", "hPa")
                .add("1000", "kPa")
                .add("1e6", "MPa", "N/mm2")
                .add("1e5", "bar")
                .add("100", "mbar")
                .add("0.1", "ubar")
                .ratio("101325", "760", "Torr")
                .ratio("101.325", "760", "mTorr", "micron")
                .add("133.322387415", "mmHg")
                .add("101325", "atm")
                // 0.45359237 kg under 9.80665 m/s2 on a square inch
                .ratio("4.4482216152605", "0.00064516", "psi")
                .close();
    }

    private static void thermal() {
        new Rows(Dimension.TEMPERATURE)
                .from("273.15", "1", "1", "degC", "\u00b0C")
                .si("K")
                .from("459.67", "5", "9", "degF", "\u00b0F")
                .close();
        // Only K: "10 degC" could be a difference or a temperature, and the reader cannot know which was meant.
        new Rows(Dimension.TEMPERATURE_DIFFERENCE).si("K").close();
        // one International Table BTU is 1055.05585262 J
        new Rows(Dimension.POWER)
                .si("W")
                .add("1000", "kW")
                .ratio("1055.05585262", "3600", "BTU/h")
                .close();
        new Rows(Dimension.HEAT_FLUX)
                .si("W/m2")
                .add("1000", "kW/m2")
                .add("1e4", "W/cm2")
                .close();
        new Rows(Dimension.HEAT_TRANSFER_COEFFICIENT)
                .si("W/(m2 K)", "W/m2K")
                .add("1000", "kW/(m2 K)", "kW/m2K")
                .close();
        new Rows(Dimension.THERMAL_CONDUCTIVITY).si("W/(m K)", "W/mK").close();
        new Rows(Dimension.THERMAL_CONDUCTANCE).si("W/K").close();
    }

    private static void properties() {
        new Rows(Dimension.HEAT_CAPACITY).si("J/K").add("1000", "kJ/K").close();
        new Rows(Dimension.SPECIFIC_HEAT)
                .si("J/(kg K)", "J/kgK")
                .add("1000", "kJ/(kg K)", "kJ/kgK")
                .close();
        new Rows(Dimension.SPECIFIC_ENERGY)
                .si("J/kg")
                .add("1000", "kJ/kg")
                .add("1000", "J/g")
                .close();
        new Rows(Dimension.DENSITY)
                .si("kg/m3")
                .add("1000", "g/cm3")
                .add("1000", "g/mL")
                .add("1000", "kg/L")
                .close();
        new Rows(Dimension.DYNAMIC_VISCOSITY)
                .si("Pa s")
                .add("0.001", "mPa s", "cP")
                .close();
        new Rows(Dimension.SURFACE_TENSION)
                .si("N/m")
                .add("0.001", "mN/m", "dyn/cm")
                .close();
        new Rows(Dimension.EXPANSION).si("1/K").close();
        new Rows(Dimension.MOLAR_MASS).si("kg/mol").add("0.001", "g/mol").close();
        new Rows(Dimension.GAS_FLOW)
                .si("Pa m3/s")
                .add("0.001", "Pa L/s")
                .ratio("101.325", "760", "Torr L/s")
                .add("0.1", "mbar L/s")
                .close();
        // half a turn is pi, to the digits of a double
        new Rows(Dimension.ANGLE)
                .ratio("3.141592653589793", "180", "deg")
                .si("rad")
                .close();
        new Rows(Dimension.FRACTION).add("0.01", "%").si("1").close();
    }

    /** Collects the spellings of one dimension, in the order in which they are offered. */
    private static final class Rows {
        private final Dimension dimension;
        private final List<UnitSpelling> rows = new ArrayList<>();

        Rows(Dimension dimension) {
            this.dimension = dimension;
        }

        Rows si(String... spellings) {
            return add("1", spellings);
        }

        Rows add(String siUnits, String... spellings) {
            return ratio(siUnits, "1", spellings);
        }

        Rows ratio(String numerator, String denominator, String... spellings) {
            return from("0", numerator, denominator, spellings);
        }

        Rows from(String offset, String numerator, String denominator, String... spellings) {
            for (String spelling : spellings) {
                rows.add(new UnitSpelling(spelling, dimension, numerator, denominator, offset));
            }
            return this;
        }

        void close() {
            BY_DIMENSION.put(dimension, List.copyOf(rows));
            rows.forEach(row -> BY_TEXT.computeIfAbsent(row.text(), unused -> new ArrayList<>())
                    .add(row));
        }
    }
}
