package boilwright.fluid;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.PropertyValue.Figure;
import boilwright.fluid.PropertyValue.Span;
import boilwright.units.PhysicalConstants;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/**
 * A fluid as its data file states it, evaluated with the published equations themselves. It answers over its temperature
 * span and refuses every other temperature with a {@link boilwright.errors.ComputationException}; inside the span, but
 * outside the range in which a source vouches for a relation, the relation is extrapolated and {@link #rangeNotes} says
 * so. {@link TabulatedFluid} is the fast form.
 */
public final class FluidRecord implements WorkingFluid {
    /** Extrapolation that is not worth a note, K. */
    private static final double RANGE_SLACK_K = 10;

    private final String id;
    private final String title;
    private final Optional<String> family;
    private final boolean validationOnly;
    private final Span span;
    private final EnumMap<FluidProperty, PropertyValue> values;

    private final double molarMass;
    private final Relation vapourPressure;
    private final Relation latentHeat;
    private final Relation density;
    private final Relation.Polynomial specificHeat;
    private final Relation.Polynomial enthalpy;
    private final Relation conductivity;
    private final Relation viscosity;
    private final Relation surfaceTension;
    private TabulatedFluid tables;

    /** Called by {@link FluidFileReader}, which has checked that every required figure is there and plausible. */
    FluidRecord(
            String id,
            String title,
            Optional<String> family,
            boolean validationOnly,
            Span span,
            Map<FluidProperty, PropertyValue> values) {
        this.id = id;
        this.title = title;
        this.family = family;
        this.validationOnly = validationOnly;
        this.span = span;
        this.values = new EnumMap<>(values);
        molarMass = number(FluidProperty.MOLAR_MASS);
        vapourPressure = relation(FluidProperty.VAPOUR_PRESSURE);
        latentHeat = relation(FluidProperty.LATENT_HEAT);
        density = relation(FluidProperty.DENSITY);
        specificHeat = (Relation.Polynomial) relation(FluidProperty.SPECIFIC_HEAT);
        enthalpy = specificHeat.integralFrom(PhysicalConstants.ZERO_CELSIUS_K);
        conductivity = relation(FluidProperty.CONDUCTIVITY);
        viscosity = relation(FluidProperty.VISCOSITY);
        surfaceTension = relation(FluidProperty.SURFACE_TENSION);
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String title() {
        return title;
    }

    /** What it is chemically, such as "silicone" or "ester"; empty when its file does not say. */
    public Optional<String> family() {
        return family;
    }

    /** True for a fluid that serves only to check the program against published values, not to fill a pump. */
    public boolean isValidationOnly() {
        return validationOnly;
    }

    /** Lowest temperature at which the fluid is evaluated, K. */
    public double lowestTemperature() {
        return span.low();
    }

    /** Highest temperature at which the fluid is evaluated, K. */
    public double highestTemperature() {
        return span.high();
    }

    /**
     * A note for a result that used the fluid between two temperatures: which relations were extrapolated by more than a few
     * kelvin beyond the range in which their sources vouch for them; empty when none was.
     *
     * @param lowestK lowest temperature used, K
     * @param highestK highest temperature used, K
     */
    public List<Message> rangeNotes(double lowestK, double highestK) {
        Span used = new Span(lowestK + RANGE_SLACK_K, highestK - RANGE_SLACK_K);
        List<String> extrapolated = new ArrayList<>();
        for (PropertyValue value : values.values()) {
            value.figure()
                    .flatMap(Figure::range)
                    .filter(range -> !range.contains(used))
                    .ifPresent(range -> extrapolated.add(
                            value.property().title() + " (" + Math.round(range.low() - PhysicalConstants.ZERO_CELSIUS_K)
                                    + " to " + Math.round(range.high() - PhysicalConstants.ZERO_CELSIUS_K) + ")"));
        }
        return extrapolated.isEmpty()
                ? List.of()
                : List.of(Message.of(
                        MessageKey.FLUID_EXTRAPOLATED,
                        title,
                        Long.toString(Math.round(lowestK - PhysicalConstants.ZERO_CELSIUS_K)),
                        Long.toString(Math.round(highestK - PhysicalConstants.ZERO_CELSIUS_K)),
                        String.join(", ", extrapolated)));
    }

    /**
     * Everything the file states, in a fixed order, alternatives and figures that are not available included.
     *
     * @param citation turns a source key into a citation; {@link FluidLibrary#lines} brings the right one
     */
    List<PropertyLine> lines(UnaryOperator<String> citation) {
        return PropertyLine.of(values.values(), span, citation);
    }

    /** What the file states of a property. */
    PropertyValue value(FluidProperty property) {
        return values.get(property);
    }

    @Override
    public double molarMass() {
        return molarMass;
    }

    @Override
    public double specificGasConstant() {
        return PhysicalConstants.MOLAR_GAS_CONSTANT / molarMass;
    }

    @Override
    public double heatCapacityRatio() {
        return number(FluidProperty.HEAT_CAPACITY_RATIO);
    }

    @Override
    public double vapourViscosity() {
        return number(FluidProperty.VAPOUR_VISCOSITY);
    }

    @Override
    public double vapourPressure(double temperatureK) {
        return checked(FluidProperty.VAPOUR_PRESSURE, vapourPressure, temperatureK);
    }

    @Override
    public double vapourPressureSlope(double temperatureK) {
        check(FluidProperty.VAPOUR_PRESSURE, temperatureK);
        return vapourPressure.slope(temperatureK);
    }

    @Override
    public double saturationTemperature(double pressurePa) {
        double lowest = vapourPressure.value(span.low());
        double highest = vapourPressure.value(span.high());
        if (!(pressurePa >= lowest && pressurePa <= highest)) {
            throw Outside.pressure(title, pressurePa, lowest, highest);
        }
        return saturation(Math.log(pressurePa), lowest, highest);
    }

    @Override
    public double latentHeat(double temperatureK) {
        return checked(FluidProperty.LATENT_HEAT, latentHeat, temperatureK);
    }

    @Override
    public double liquidEnthalpy(double temperatureK) {
        return checked(FluidProperty.SPECIFIC_HEAT, enthalpy, temperatureK);
    }

    @Override
    public double liquidSpecificHeat(double temperatureK) {
        return checked(FluidProperty.SPECIFIC_HEAT, specificHeat, temperatureK);
    }

    @Override
    public double liquidDensity(double temperatureK) {
        return checked(FluidProperty.DENSITY, density, temperatureK);
    }

    @Override
    public double liquidExpansion(double temperatureK) {
        check(FluidProperty.DENSITY, temperatureK);
        return -density.slope(temperatureK) / density.value(temperatureK);
    }

    @Override
    public double liquidConductivity(double temperatureK) {
        return checked(FluidProperty.CONDUCTIVITY, conductivity, temperatureK);
    }

    @Override
    public double liquidViscosity(double temperatureK) {
        return checked(FluidProperty.VISCOSITY, viscosity, temperatureK);
    }

    @Override
    public double surfaceTension(double temperatureK) {
        return checked(FluidProperty.SURFACE_TENSION, surfaceTension, temperatureK);
    }

    @Override
    public double usualBoilerPressure() {
        return number(FluidProperty.BOILER_PRESSURE);
    }

    @Override
    public double[] usualBoilerPressureRange() {
        Figure figure = value(FluidProperty.BOILER_PRESSURE).figure().orElseThrow();
        Span usual = figure.usual().orElseThrow();
        return new double[] {usual.low(), usual.high()};
    }

    @Override
    public OptionalDouble bulkLimit() {
        return optional(FluidProperty.BULK_LIMIT);
    }

    @Override
    public OptionalDouble filmLimit() {
        return optional(FluidProperty.FILM_LIMIT);
    }

    @Override
    public OptionalDouble airAdmissionLimit() {
        return optional(FluidProperty.AIR_ADMISSION_LIMIT);
    }

    @Override
    public OptionalDouble dissolvedAir() {
        return optional(FluidProperty.DISSOLVED_AIR);
    }

    @Override
    public boolean resistsOxidation() {
        return number(FluidProperty.RESISTS_OXIDATION) != 0;
    }

    @Override
    public boolean isToxicVapour() {
        return number(FluidProperty.TOXIC_VAPOUR) != 0;
    }

    /** Its tables, made when they are first wanted. */
    synchronized TabulatedFluid tables() {
        if (tables == null) {
            tables = new TabulatedFluid(
                    this,
                    Math.max(lowestTemperature(), TabulatedFluid.LOWEST_K),
                    Math.min(highestTemperature(), TabulatedFluid.HIGHEST_K));
        }
        return tables;
    }

    private double checked(FluidProperty property, Relation relation, double temperatureK) {
        check(property, temperatureK);
        return relation.value(temperatureK);
    }

    private void check(FluidProperty property, double temperatureK) {
        if (!(temperatureK >= span.low() && temperatureK <= span.high())) {
            throw Outside.temperature(title, property.title(), temperatureK, span.low(), span.high());
        }
    }

    private double number(FluidProperty property) {
        return values.get(property).figure().orElseThrow().number();
    }

    private OptionalDouble optional(FluidProperty property) {
        Optional<Figure> figure = values.get(property).figure();
        return figure.isPresent() ? OptionalDouble.of(figure.get().number()) : OptionalDouble.empty();
    }

    private Relation relation(FluidProperty property) {
        return values.get(property).figure().orElseThrow().relation();
    }

    /**
     * Newton on ln p against 1/T, in which vapour pressures are nearly straight, with bisection whenever a step leaves the
     * bracket; own code because a root finder called with a lambda would allocate.
     */
    private double saturation(double lnP, double lowestPa, double highestPa) {
        double coldest = 1 / span.low();
        double hottest = 1 / span.high();
        double share = (lnP - Math.log(lowestPa)) / (Math.log(highestPa) - Math.log(lowestPa));
        double x = coldest + share * (hottest - coldest);
        for (int round = 0; round < 100; round++) {
            double t = 1 / x;
            double p = vapourPressure.value(t);
            double error = Math.log(p) - lnP;
            if (error > 0) {
                hottest = x;
            } else {
                coldest = x;
            }
            double next = x + error / (vapourPressure.slope(t) / p * t * t);
            if (!(next >= hottest && next <= coldest)) {
                next = 0.5 * (hottest + coldest);
            }
            if (Math.abs(next - x) <= 1e-14 * x) {
                return Math.max(span.low(), Math.min(span.high(), 1 / next));
            }
            x = next;
        }
        return Math.max(span.low(), Math.min(span.high(), 1 / x));
    }
}
