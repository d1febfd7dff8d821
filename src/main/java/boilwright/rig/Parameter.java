package boilwright.rig;

import boilwright.units.Dimension;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * The parameter registry: every uncertain default of the model with its range. A rig file may set any of them; spread,
 * fit, causes and drills only change these values. Where the source is "engineering judgement" no publication was found:
 * the figure is from memory and its range is wide on purpose.
 */
public enum Parameter {
    EVAPORATION_COEFFICIENT(
            0.8,
            0.3,
            1.0,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "evaporation measurements near 1, still liquids lower; engineering judgement"),
    BOILING_SURFACE_FACTOR(2.0, 1.0, 3.0, Shape.UNIFORM, Dimension.FRACTION, "engineering judgement"),
    BOILING_HEAT_TRANSFER_FACTOR(1.0, 0.5, 2.0, Shape.LOG_UNIFORM, Dimension.FRACTION, "engineering judgement"),
    BURNER_BEST_EFFICIENCY(
            0.65, 0.55, 0.80, Shape.UNIFORM, Dimension.FRACTION, "pot tests on gas burners, Gonzalez 2010"),
    BURNER_SATURATION_FLUX(
            85e3, 60e3, 110e3, Shape.UNIFORM, Dimension.HEAT_FLUX, "pot tests on gas burners, Gonzalez 2010"),
    FLAME_TEMPERATURE(1500, 1300, 1700, Shape.UNIFORM, Dimension.TEMPERATURE, "engineering judgement"),
    CONTACT_MACHINED_METAL(
            1000, 600, 1500, Shape.LOG_UNIFORM, Dimension.HEAT_TRANSFER_COEFFICIENT, "engineering judgement"),
    CONTACT_FLAT_GLASS(160, 100, 250, Shape.LOG_UNIFORM, Dimension.HEAT_TRANSFER_COEFFICIENT, "engineering judgement"),
    CONTACT_DOMED_GLASS(40, 20, 80, Shape.LOG_UNIFORM, Dimension.HEAT_TRANSFER_COEFFICIENT, "engineering judgement"),
    CONTACT_MANTLE(40, 25, 60, Shape.LOG_UNIFORM, Dimension.HEAT_TRANSFER_COEFFICIENT, "engineering judgement"),
    SUPPLY_POWER_FACTOR(1.0, 0.9, 1.1, Shape.UNIFORM, Dimension.FRACTION, "mains tolerance of 10 %, common practice"),
    DISCHARGE_COEFFICIENT(
            0.85,
            0.60,
            0.95,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "viscous loss in throats of low Reynolds number; engineering judgement"),
    CRITICAL_BACKING_RATIO(
            0.5,
            0.4,
            0.7,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "tolerable forepressure over boiler pressure, Hablanian, from memory"),
    STAGE_COMPRESSION(10, 3, 30, Shape.LOG_UNIFORM, Dimension.FRACTION, "engineering judgement"),
    SPEED_COEFFICIENT(
            0.45,
            0.30,
            0.85,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "Ho coefficient 0.30-0.50 in practice, Mueller 2020; theory to 0.85"),
    THROUGHPUT_PER_POWER(
            1.65e-4,
            1.3e-4,
            2.0e-4,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "1-1.5 Torr L/s per kW, Hablanian, from memory; Pa m3/s per W"),
    WALL_PRESSURE_SHARE(0.05, 0.02, 0.20, Shape.LOG_UNIFORM, Dimension.FRACTION, "engineering judgement"),
    MOMENTUM_RECOVERY(0.5, 0.0, 0.5, Shape.UNIFORM, Dimension.FRACTION, "engineering judgement"),
    THIN_GAS_CONDUCTANCE(
            0.5,
            0.1,
            2.0,
            Shape.LOG_UNIFORM,
            Dimension.HEAT_TRANSFER_COEFFICIENT,
            "free-molecular conduction at 1-30 Pa; engineering judgement"),
    CAP_SPILL_FRACTION(0.03, 0.0, 0.10, Shape.UNIFORM, Dimension.FRACTION, "engineering judgement"),
    CONDENSATE_REHEAT_FACTOR(1.0, 0.5, 1.5, Shape.UNIFORM, Dimension.FRACTION, "engineering judgement"),
    GLASS_FLUX_PEAK_FACTOR(1.5, 1.0, 3.0, Shape.LOG_UNIFORM, Dimension.FRACTION, "engineering judgement"),
    DEGASSING_TIME(150, 60, 600, Shape.LOG_UNIFORM, Dimension.TIME, "engineering judgement"),
    DISSOLVED_GAS_DIFFUSIVITY(
            3.4e-9, 1e-9, 1e-8, Shape.LOG_UNIFORM, Dimension.FRACTION, "gas in oil, m2/s, from memory"),
    DISSOLVED_AIR(
            0.10,
            0.05,
            0.18,
            Shape.UNIFORM,
            Dimension.FRACTION,
            "air in mineral oil 0.10 and in silicones 0.11 to 0.18 by volume at one atmosphere, for a fluid without a figure"),
    NITROGEN_COMPRESSION(
            1e7, 1e6, 1e8, Shape.LOG_UNIFORM, Dimension.FRACTION, "foreline over inlet pressure of air, from memory"),
    HYDROGEN_COMPRESSION(
            1e5,
            1e4,
            1e6,
            Shape.LOG_UNIFORM,
            Dimension.FRACTION,
            "foreline over inlet pressure of hydrogen 1e4 to 1e6, from memory"),
    FORELINE_HYDROGEN(
            0.01,
            0.001,
            0.1,
            Shape.LOG_UNIFORM,
            Dimension.FRACTION,
            "hydrogen from cracked oil in the foreline's gas; engineering judgement"),
    WETTING_FILM(
            3e-5, 1e-5, 1e-4, Shape.LOG_UNIFORM, Dimension.LENGTH, "oil held on cap and walls; engineering judgement"),
    ICE_MELTING_CONDUCTANCE(
            3000,
            500,
            10_000,
            Shape.LOG_UNIFORM,
            Dimension.THERMAL_CONDUCTANCE,
            "heat that melting ice takes per kelvin above freezing in a stirred tank; engineering judgement");

    /** How the values between low and high are weighted. */
    public enum Shape {
        UNIFORM,
        LOG_UNIFORM
    }

    private final double nominal;
    private final double low;
    private final double high;
    private final Shape shape;
    private final Dimension dimension;
    private final String source;

    Parameter(double nominal, double low, double high, Shape shape, Dimension dimension, String source) {
        this.nominal = nominal;
        this.low = low;
        this.high = high;
        this.shape = shape;
        this.dimension = dimension;
        this.source = source;
    }

    /** How rig files and reports spell it. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The value used when nothing else is said, SI. */
    public double nominal() {
        return nominal;
    }

    /** Low end of what is believed possible, SI. */
    public double low() {
        return low;
    }

    /** High end of what is believed possible, SI. */
    public double high() {
        return high;
    }

    /** How the values between the ends are weighted. */
    public Shape shape() {
        return shape;
    }

    /** What it measures (a plain number for compound units, which the source names). */
    public Dimension dimension() {
        return dimension;
    }

    /** Where figure and range come from. */
    public String source() {
        return source;
    }

    /** The parameter with this id, if there is one. */
    public static Optional<Parameter> find(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }
}
