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

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import javax.measure.IncommensurableException;
import javax.measure.Unit;

/**
 * The same units put together from those of JSR-385 (indriya, si-units, systems-common), as a second reckoning of the factors of
 * {@link UnitTable}. Where the library has no unit, the defining value of NIST SP 811 is multiplied in as a whole number.
 */
final class JsrUnits {
    /** One spelling's conversions. */
    record Conversion(DoubleUnaryOperator toSi, DoubleUnaryOperator fromSi) {}

    private static final Map<Dimension, Map<String, Conversion>> CONVERSIONS = new HashMap<>();

    static {
        mechanical();
        flows();
        pressures();
        thermal();
        properties();
    }

    private JsrUnits() {}

    /** The conversions of a spelling; null when it is not among them. */
    static Conversion find(String spelling, Dimension dimension) {
        return CONVERSIONS.get(dimension).get(spelling);
    }

    private static void mechanical() {
        Rows length = new Rows(Dimension.LENGTH, METRE);
        length.add(METRE, "m").add(CENTI(METRE), "cm").add(MILLI(METRE), "mm").add(MICRO(METRE), "um");
        length.add(INCH, "in").add(FOOT, "ft");
        Rows area = new Rows(Dimension.AREA, SQUARE_METRE);
        area.add(SQUARE_METRE, "m2")
                .add(CENTI(METRE).pow(2), "cm2")
                .add(MILLI(METRE).pow(2), "mm2");
        area.add(INCH.pow(2), "in2");
        Rows volume = new Rows(Dimension.VOLUME, CUBIC_METRE);
        volume.add(CUBIC_METRE, "m3").add(LITRE, "L").add(MILLI(LITRE), "mL");
        volume.add(CENTI(METRE).pow(3), "cm3", "cc").add(GALLON_LIQUID, "gal");
        Rows time = new Rows(Dimension.TIME, SECOND);
        time.add(SECOND, "s").add(MINUTE, "min").add(HOUR, "h");
        Rows mass = new Rows(Dimension.MASS, KILOGRAM);
        mass.add(KILOGRAM, "kg").add(GRAM, "g").add(POUND, "lb");
    }

    private static void flows() {
        Rows volumeFlow = new Rows(Dimension.VOLUME_FLOW, CUBIC_METRE.divide(SECOND));
        volumeFlow.add(LITRE.divide(MINUTE), "L/min").add(LITRE.divide(SECOND), "L/s");
        volumeFlow.add(LITRE.divide(HOUR), "L/h").add(MILLI(LITRE).divide(SECOND), "mL/s");
        volumeFlow.add(MILLI(LITRE).divide(MINUTE), "mL/min").add(CUBIC_METRE.divide(SECOND), "m3/s");
        volumeFlow.add(CUBIC_METRE.divide(HOUR), "m3/h").add(CUBIC_FOOT.divide(MINUTE), "CFM");
        volumeFlow.add(GALLON_LIQUID.divide(MINUTE), "gal/min");
        Rows massFlow = new Rows(Dimension.MASS_FLOW, KILOGRAM.divide(SECOND));
        massFlow.add(KILOGRAM.divide(SECOND), "kg/s").add(GRAM.divide(SECOND), "g/s");
        massFlow.add(GRAM.divide(MINUTE), "g/min").add(GRAM.divide(HOUR), "g/h");
        massFlow.add(KILOGRAM.divide(HOUR), "kg/h");
        Rows speed = new Rows(Dimension.SPEED, METRE.divide(SECOND));
        speed.add(METRE.divide(SECOND), "m/s").add(CENTI(METRE).divide(SECOND), "cm/s");
        speed.add(KILO(METRE).divide(HOUR), "km/h").add(FOOT.divide(MINUTE), "ft/min");
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
    }

    private static void thermal() {
        Rows temperature = new Rows(Dimension.TEMPERATURE, KELVIN);
        temperature.add(CELSIUS, "degC", "\u00b0C").add(KELVIN, "K").add(FAHRENHEIT, "degF", "\u00b0F");
        // Only K: "10 degC" could be a difference or a temperature, and the reader cannot know which was meant.
        new Rows(Dimension.TEMPERATURE_DIFFERENCE, KELVIN).add(KELVIN, "K");

        Unit<?> britishThermalUnit = JOULE.multiply(105_505_585_262L).divide(100_000_000L);
        Rows power = new Rows(Dimension.POWER, WATT);
        power.add(WATT, "W").add(KILO(WATT), "kW").add(britishThermalUnit.divide(HOUR), "BTU/h");
        Unit<?> squareCentimetre = CENTI(METRE).pow(2);
        Rows flux = new Rows(Dimension.HEAT_FLUX, WATT.divide(SQUARE_METRE));
        flux.add(WATT.divide(SQUARE_METRE), "W/m2").add(KILO(WATT).divide(SQUARE_METRE), "kW/m2");
        flux.add(WATT.divide(squareCentimetre), "W/cm2");

        Unit<?> perSquareMetreKelvin = WATT.divide(SQUARE_METRE).divide(KELVIN);
        Rows coefficient = new Rows(Dimension.HEAT_TRANSFER_COEFFICIENT, perSquareMetreKelvin);
        coefficient.add(perSquareMetreKelvin, "W/(m2 K)", "W/m2K");
        coefficient.add(perSquareMetreKelvin.multiply(1_000), "kW/(m2 K)", "kW/m2K");
        Unit<?> perMetreKelvin = WATT.divide(METRE).divide(KELVIN);
        new Rows(Dimension.THERMAL_CONDUCTIVITY, perMetreKelvin).add(perMetreKelvin, "W/(m K)", "W/mK");
        Unit<?> perKelvin = WATT.divide(KELVIN);
        new Rows(Dimension.THERMAL_CONDUCTANCE, perKelvin).add(perKelvin, "W/K");
    }

    private static void properties() {
        Unit<?> jouleKelvin = JOULE.divide(KELVIN);
        Rows capacity = new Rows(Dimension.HEAT_CAPACITY, jouleKelvin);
        capacity.add(jouleKelvin, "J/K").add(jouleKelvin.multiply(1_000), "kJ/K");
        Unit<?> specific = jouleKelvin.divide(KILOGRAM);
        Rows specificHeat = new Rows(Dimension.SPECIFIC_HEAT, specific);
        specificHeat.add(specific, "J/(kg K)", "J/kgK").add(specific.multiply(1_000), "kJ/(kg K)", "kJ/kgK");
        Unit<?> joulePerKilogram = JOULE.divide(KILOGRAM);
        Rows energy = new Rows(Dimension.SPECIFIC_ENERGY, joulePerKilogram);
        energy.add(joulePerKilogram, "J/kg").add(KILO(JOULE).divide(KILOGRAM), "kJ/kg");
        energy.add(JOULE.divide(GRAM), "J/g");

        Rows density = new Rows(Dimension.DENSITY, KILOGRAM.divide(CUBIC_METRE));
        density.add(KILOGRAM.divide(CUBIC_METRE), "kg/m3")
                .add(GRAM.divide(CENTI(METRE).pow(3)), "g/cm3");
        density.add(GRAM.divide(MILLI(LITRE)), "g/mL").add(KILOGRAM.divide(LITRE), "kg/L");
        Unit<?> pascalSecond = PASCAL.multiply(SECOND);
        Rows viscosity = new Rows(Dimension.DYNAMIC_VISCOSITY, pascalSecond);
        viscosity.add(pascalSecond, "Pa s").add(pascalSecond.divide(1_000), "mPa s", "cP");
        Unit<?> newtonPerMetre = NEWTON.divide(METRE);
        Rows tension = new Rows(Dimension.SURFACE_TENSION, newtonPerMetre);
        tension.add(newtonPerMetre, "N/m").add(newtonPerMetre.divide(1_000), "mN/m", "dyn/cm");

        Unit<?> reciprocalKelvin = KELVIN.inverse();
        new Rows(Dimension.EXPANSION, reciprocalKelvin).add(reciprocalKelvin, "1/K");
        Rows molarMass = new Rows(Dimension.MOLAR_MASS, KILOGRAM.divide(MOLE));
        molarMass.add(KILOGRAM.divide(MOLE), "kg/mol").add(GRAM.divide(MOLE), "g/mol");
        Unit<?> pascalCubicMetre = PASCAL.multiply(CUBIC_METRE).divide(SECOND);
        Unit<?> litreSecond = LITRE.divide(SECOND);
        Unit<?> torr = PASCAL.multiply(101_325).divide(760);
        Rows gas = new Rows(Dimension.GAS_FLOW, pascalCubicMetre);
        gas.add(pascalCubicMetre, "Pa m3/s").add(PASCAL.multiply(litreSecond), "Pa L/s");
        gas.add(torr.multiply(litreSecond), "Torr L/s").add(PASCAL.multiply(100).multiply(litreSecond), "mbar L/s");
        Unit<?> degree = RADIAN.multiply(Math.PI).divide(180);
        new Rows(Dimension.ANGLE, RADIAN).add(degree, "deg").add(RADIAN, "rad");
        new Rows(Dimension.FRACTION, ONE).add(PERCENT, "%").add(ONE, "1");
    }

    /** Collects the spellings of one dimension. */
    private static final class Rows {
        private final Unit<?> si;
        private final Map<String, Conversion> rows = new HashMap<>();

        Rows(Dimension dimension, Unit<?> si) {
            this.si = si;
            CONVERSIONS.put(dimension, rows);
        }

        Rows add(Unit<?> unit, String... spellings) {
            try {
                Conversion conversion =
                        new Conversion(unit.getConverterToAny(si)::convert, si.getConverterToAny(unit)::convert);
                for (String spelling : spellings) {
                    rows.put(spelling, conversion);
                }
            } catch (IncommensurableException fault) {
                throw new IllegalArgumentException(fault);
            }
            return this;
        }
    }
}
