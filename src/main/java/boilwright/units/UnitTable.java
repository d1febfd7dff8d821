package boilwright.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.HECTO;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static systems.uom.common.USCustomary.CUBIC_FOOT;
import static systems.uom.common.USCustomary.FAHRENHEIT;
import static systems.uom.common.USCustomary.FOOT;
import static systems.uom.common.USCustomary.GALLON_LIQUID;
import static systems.uom.common.USCustomary.INCH;
import static systems.uom.common.USCustomary.POUND;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.MOLE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.WATT;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.measure.Unit;

/**
 * The closed table of unit spellings. A spelling that is not here is refused, never guessed. Spellings are
 * case-sensitive, because mPa and MPa both exist. Defined values that JSR-385 does not bring (standard atmosphere, torr
 * as 1/760 of it, conventional millimetre of mercury, International Table BTU, standard gravity in psi) are those of
 * NIST SP 811, appendix B, and exact there. A gallon is the US one.
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
        Rows length = new Rows(Dimension.LENGTH, METRE);
        length.add(METRE, "m").add(CENTI(METRE), "cm").add(MILLI(METRE), "mm").add(MICRO(METRE), "um");
        length.add(INCH, "in").add(FOOT, "ft").close();
        Rows area = new Rows(Dimension.AREA, SQUARE_METRE);
        area.add(SQUARE_METRE, "m2")
                .add(CENTI(METRE).pow(2), "cm2")
                .add(MILLI(METRE).pow(2), "mm2");
        area.add(INCH.pow(2), "in2").close();
        Rows volume = new Rows(Dimension.VOLUME, CUBIC_METRE);
        volume.add(CUBIC_METRE, "m3").add(LITRE, "L").add(MILLI(LITRE), "mL");
        volume.add(CENTI(METRE).pow(3), "cm3", "cc").add(GALLON_LIQUID, "gal").close();
        Rows time = new Rows(Dimension.TIME, SECOND);
        time.add(SECOND, "s").add(MINUTE, "min").add(HOUR, "h").close();
        Rows mass = new Rows(Dimension.MASS, KILOGRAM);
        mass.add(KILOGRAM, "kg").add(GRAM, "g").add(POUND, "lb").close();
    }

    private static void flows() {
        Rows volumeFlow = new Rows(Dimension.VOLUME_FLOW, CUBIC_METRE.divide(SECOND));
        volumeFlow.add(LITRE.divide(MINUTE), "L/min").add(LITRE.divide(SECOND), "L/s");
        volumeFlow.add(LITRE.divide(HOUR), "L/h").add(MILLI(LITRE).divide(SECOND), "mL/s");
        volumeFlow.add(MILLI(LITRE).divide(MINUTE), "mL/min").add(CUBIC_METRE.divide(SECOND), "m3/s");
        volumeFlow.add(CUBIC_METRE.divide(HOUR), "m3/h").add(CUBIC_FOOT.divide(MINUTE), "CFM");
        volumeFlow.add(GALLON_LIQUID.divide(MINUTE), "gal/min").close();
        Rows massFlow = new Rows(Dimension.MASS_FLOW, KILOGRAM.divide(SECOND));
        massFlow.add(KILOGRAM.divide(SECOND), "kg/s").add(GRAM.divide(SECOND), "g/s");
        massFlow.add(GRAM.divide(MINUTE), "g/min").add(GRAM.divide(HOUR), "g/h");
        massFlow.add(KILOGRAM.divide(HOUR), "kg/h").close();
        Rows speed = new Rows(Dimension.SPEED, METRE.divide(SECOND));
        speed.add(METRE.divide(SECOND), "m/s").add(CENTI(METRE).divide(SECOND), "cm/s");
        speed.add(KILO(METRE).divide(HOUR), "km/h").add(FOOT.divide(MINUTE), "ft/min");
        speed.close();
    }

    private static void pressures() {
        Unit<?> atmosphere = PASCAL.multiply(101_325);
        Unit<?> bar = PASCAL.multiply(100_000);
        Unit<?> torr = atmosphere.divide(760);
        Unit<?> millimetreOfMercury = PASCAL.multiply(133_322_387_415L).divide(1_000_000_000L);
        Unit<?> standardGravity = METRE.divide(SECOND.pow(2)).multiply(980_665).divide(100_000);
        Unit<?> poundPerSquareInch = POUND.multiply(standardGravity).divide(INCH.pow(2));
        Rows pressure = new Rows(Dimension.PRESSURE, PASCAL);
        pressure.add(PASCAL, "Pa").add(HECTO(PASCAL), "hPa").add(KILO(PASCAL), "kPa");
        pressure.add(MEGA(PASCAL), "MPa", "N/mm2").add(bar, "bar").add(bar.divide(1_000), "mbar");
        pressure.add(bar.divide(1_000_000), "ubar").add(torr, "Torr").add(torr.divide(1_000), "mTorr", "micron");
        pressure.add(millimetreOfMercury, "mmHg").add(atmosphere, "atm").add(poundPerSquareInch, "psi");
        pressure.close();
    }

    private static void thermal() {
        Rows temperature = new Rows(Dimension.TEMPERATURE, KELVIN);
        temperature.add(CELSIUS, "degC", "\u00b0C").add(KELVIN, "K").add(FAHRENHEIT, "degF", "\u00b0F");
        temperature.close();
        // Only K: "10 degC" could be a difference or a temperature, and the reader cannot know which was meant.
        new Rows(Dimension.TEMPERATURE_DIFFERENCE, KELVIN).add(KELVIN, "K").close();

        Unit<?> britishThermalUnit = JOULE.multiply(105_505_585_262L).divide(100_000_000L);
        Rows power = new Rows(Dimension.POWER, WATT);
        power.add(WATT, "W").add(KILO(WATT), "kW").add(britishThermalUnit.divide(HOUR), "BTU/h");
        power.close();
        Unit<?> squareCentimetre = CENTI(METRE).pow(2);
        Rows flux = new Rows(Dimension.HEAT_FLUX, WATT.divide(SQUARE_METRE));
        flux.add(WATT.divide(SQUARE_METRE), "W/m2").add(KILO(WATT).divide(SQUARE_METRE), "kW/m2");
        flux.add(WATT.divide(squareCentimetre), "W/cm2").close();

        Unit<?> perSquareMetreKelvin = WATT.divide(SQUARE_METRE).divide(KELVIN);
        Rows coefficient = new Rows(Dimension.HEAT_TRANSFER_COEFFICIENT, perSquareMetreKelvin);
        coefficient.add(perSquareMetreKelvin, "W/(m2 K)", "W/m2K");
        coefficient
                .add(perSquareMetreKelvin.multiply(1_000), "kW/(m2 K)", "kW/m2K")
                .close();
        Unit<?> perMetreKelvin = WATT.divide(METRE).divide(KELVIN);
        new Rows(Dimension.THERMAL_CONDUCTIVITY, perMetreKelvin)
                .add(perMetreKelvin, "W/(m K)", "W/mK")
                .close();
        Unit<?> perKelvin = WATT.divide(KELVIN);
        new Rows(Dimension.THERMAL_CONDUCTANCE, perKelvin).add(perKelvin, "W/K").close();
    }

    private static void properties() {
        Unit<?> jouleKelvin = JOULE.divide(KELVIN);
        Rows capacity = new Rows(Dimension.HEAT_CAPACITY, jouleKelvin);
        capacity.add(jouleKelvin, "J/K")
                .add(jouleKelvin.multiply(1_000), "kJ/K")
                .close();
        Unit<?> specific = jouleKelvin.divide(KILOGRAM);
        Rows specificHeat = new Rows(Dimension.SPECIFIC_HEAT, specific);
        specificHeat.add(specific, "J/(kg K)", "J/kgK").add(specific.multiply(1_000), "kJ/(kg K)", "kJ/kgK");
        specificHeat.close();
        Unit<?> joulePerKilogram = JOULE.divide(KILOGRAM);
        Rows energy = new Rows(Dimension.SPECIFIC_ENERGY, joulePerKilogram);
        energy.add(joulePerKilogram, "J/kg").add(KILO(JOULE).divide(KILOGRAM), "kJ/kg");
        energy.add(JOULE.divide(GRAM), "J/g").close();

        Rows density = new Rows(Dimension.DENSITY, KILOGRAM.divide(CUBIC_METRE));
        density.add(KILOGRAM.divide(CUBIC_METRE), "kg/m3")
                .add(GRAM.divide(CENTI(METRE).pow(3)), "g/cm3");
        density.add(GRAM.divide(MILLI(LITRE)), "g/mL")
                .add(KILOGRAM.divide(LITRE), "kg/L")
                .close();
        Unit<?> pascalSecond = PASCAL.multiply(SECOND);
        Rows viscosity = new Rows(Dimension.DYNAMIC_VISCOSITY, pascalSecond);
        viscosity
                .add(pascalSecond, "Pa s")
                .add(pascalSecond.divide(1_000), "mPa s", "cP")
                .close();
        Unit<?> newtonPerMetre = NEWTON.divide(METRE);
        Rows tension = new Rows(Dimension.SURFACE_TENSION, newtonPerMetre);
        tension.add(newtonPerMetre, "N/m")
                .add(newtonPerMetre.divide(1_000), "mN/m", "dyn/cm")
                .close();

        Unit<?> reciprocalKelvin = KELVIN.inverse();
        new Rows(Dimension.EXPANSION, reciprocalKelvin)
                .add(reciprocalKelvin, "1/K")
                .close();
        Rows molarMass = new Rows(Dimension.MOLAR_MASS, KILOGRAM.divide(MOLE));
        molarMass
                .add(KILOGRAM.divide(MOLE), "kg/mol")
                .add(GRAM.divide(MOLE), "g/mol")
                .close();
        Unit<?> pascalCubicMetre = PASCAL.multiply(CUBIC_METRE).divide(SECOND);
        Unit<?> litreSecond = LITRE.divide(SECOND);
        Unit<?> torr = PASCAL.multiply(101_325).divide(760);
        Rows gas = new Rows(Dimension.GAS_FLOW, pascalCubicMetre);
        gas.add(pascalCubicMetre, "Pa m3/s").add(PASCAL.multiply(litreSecond), "Pa L/s");
        gas.add(torr.multiply(litreSecond), "Torr L/s").add(PASCAL.multiply(100).multiply(litreSecond), "mbar L/s");
        gas.close();
        Unit<?> degree = RADIAN.multiply(Math.PI).divide(180);
        new Rows(Dimension.ANGLE, RADIAN).add(degree, "deg").add(RADIAN, "rad").close();
        new Rows(Dimension.FRACTION, ONE).add(PERCENT, "%").add(ONE, "1").close();
    }

    /** Collects the spellings of one dimension, in the order in which they are offered. */
    private static final class Rows {
        private final Dimension dimension;
        private final Unit<?> si;
        private final List<UnitSpelling> rows = new ArrayList<>();

        Rows(Dimension dimension, Unit<?> si) {
            this.dimension = dimension;
            this.si = si;
        }

        Rows add(Unit<?> unit, String... spellings) {
            for (String spelling : spellings) {
                rows.add(new UnitSpelling(spelling, dimension, unit, si));
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
