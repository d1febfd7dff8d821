package boilwright.fluid;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.PhysicalConstants;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * A working fluid whose temperature-dependent properties are read from cubic Hermite tables: the form the model's inner
 * loops use. Within 1e-7 (relative) of the fluid it was made from; saturation pressure and temperature are inverses of
 * each other to 1e-9, and the specific heat is exactly the derivative of the enthalpy. Outside its span every property
 * is refused with a {@link ComputationException}. Nothing here allocates, except to refuse.
 */
public final class TabulatedFluid implements WorkingFluid {
    /** Lowest temperature of a table unless the fluid's own span starts above it, K. */
    public static final double LOWEST_K = 240;
    /** Highest temperature of a table unless the fluid's own span ends below it, K. */
    public static final double HIGHEST_K = 800;

    private static final double GRID_STEP_K = 0.5;
    private static final double GRID_STEP_LN_PRESSURE = 0.05;
    private static final int FEWEST_INTERVALS = 8;
    /** What rounding of a pressure at the very end of the span may amount to, in its logarithm. */
    private static final double END_TOLERANCE = 1e-9;

    private final WorkingFluid exact;
    private final double lowestK;
    private final double highestK;
    private final HermiteTable lnPressure;
    private final HermiteTable saturation;
    private final HermiteTable latentHeat;
    private final HermiteTable enthalpy;
    private final HermiteTable density;
    private final HermiteTable expansion;
    private final HermiteTable conductivity;
    private final HermiteTable lnViscosity;
    private final HermiteTable surfaceTension;
    private final HermiteTable filmGroup;

    /**
     * Tables of a fluid.
     *
     * @param exact fluid whose properties are tabulated; it must answer over the whole span
     * @param lowestK lower end of the span, K
     * @param highestK upper end of the span, K
     * @throws ComputationException when the fluid refuses a temperature of the span
     */
    public TabulatedFluid(WorkingFluid exact, double lowestK, double highestK) {
        if (!(lowestK > 0 && lowestK < highestK)) {
            throw new IllegalArgumentException("not a span: " + lowestK + " to " + highestK);
        }
        this.exact = exact;
        this.lowestK = lowestK;
        this.highestK = highestK;
        lnPressure = table(
                t -> Math.log(exact.vapourPressure(t)), t -> exact.vapourPressureSlope(t) / exact.vapourPressure(t));
        saturation = inverse(lnPressure);
        latentHeat = table(exact::latentHeat);
        enthalpy = table(exact::liquidEnthalpy, exact::liquidSpecificHeat);
        density = table(exact::liquidDensity);
        expansion = table(exact::liquidExpansion);
        conductivity = table(exact::liquidConductivity);
        lnViscosity = table(t -> Math.log(exact.liquidViscosity(t)));
        surfaceTension = table(exact::surfaceTension);
        filmGroup = table(this::exactFilmGroup);
    }

    /**
     * Tables of a fluid over its own span, but not beyond {@link #LOWEST_K} to {@link #HIGHEST_K}; a fluid from the data has them
     * made once.
     */
    public static TabulatedFluid of(WorkingFluid fluid) {
        return fluid instanceof FluidRecord file ? file.tables() : new TabulatedFluid(fluid, LOWEST_K, HIGHEST_K);
    }

    /** Lower end of the span, K. */
    public double lowestTemperature() {
        return lowestK;
    }

    /** Upper end of the span, K. */
    public double highestTemperature() {
        return highestK;
    }

    /**
     * The liquid's part of Nusselt's laminar film relations, {@code (rho^2 g k^3 / mu)^(1/4)} with the standard
     * acceleration of gravity; the vapour's density is neglected. Nusselt, Z. VDI 60 (1916) 541.
     */
    public double filmGroup(double temperatureK) {
        check(FluidProperty.VISCOSITY, temperatureK);
        return filmGroup.value(temperatureK);
    }

    @Override
    public double vapourPressure(double temperatureK) {
        check(FluidProperty.VAPOUR_PRESSURE, temperatureK);
        return Math.exp(lnPressure.value(temperatureK));
    }

    @Override
    public double vapourPressureSlope(double temperatureK) {
        return vapourPressure(temperatureK) * lnPressure.slope(temperatureK);
    }

    @Override
    public double saturationTemperature(double pressurePa) {
        double lnP = Math.log(pressurePa);
        if (!(lnP >= saturation.low() - END_TOLERANCE && lnP <= saturation.high() + END_TOLERANCE)) {
            throw Outside.pressure(exact.title(), pressurePa, Math.exp(saturation.low()), Math.exp(saturation.high()));
        }
        double inside = Math.max(saturation.low(), Math.min(saturation.high(), lnP));
        return Math.max(lowestK, Math.min(highestK, saturation.value(inside)));
    }

    @Override
    public double latentHeat(double temperatureK) {
        check(FluidProperty.LATENT_HEAT, temperatureK);
        return latentHeat.value(temperatureK);
    }

    @Override
    public double liquidEnthalpy(double temperatureK) {
        check(FluidProperty.SPECIFIC_HEAT, temperatureK);
        return enthalpy.value(temperatureK);
    }

    @Override
    public double liquidSpecificHeat(double temperatureK) {
        check(FluidProperty.SPECIFIC_HEAT, temperatureK);
        return enthalpy.slope(temperatureK);
    }

    @Override
    public double liquidDensity(double temperatureK) {
        check(FluidProperty.DENSITY, temperatureK);
        return density.value(temperatureK);
    }

    @Override
    public double liquidExpansion(double temperatureK) {
        check(FluidProperty.DENSITY, temperatureK);
        return expansion.value(temperatureK);
    }

    @Override
    public double liquidConductivity(double temperatureK) {
        check(FluidProperty.CONDUCTIVITY, temperatureK);
        return conductivity.value(temperatureK);
    }

    @Override
    public double liquidViscosity(double temperatureK) {
        check(FluidProperty.VISCOSITY, temperatureK);
        return Math.exp(lnViscosity.value(temperatureK));
    }

    @Override
    public double surfaceTension(double temperatureK) {
        check(FluidProperty.SURFACE_TENSION, temperatureK);
        return surfaceTension.value(temperatureK);
    }

    @Override
    public String id() {
        return exact.id();
    }

    @Override
    public String title() {
        return exact.title();
    }

    @Override
    public double molarMass() {
        return exact.molarMass();
    }

    @Override
    public double specificGasConstant() {
        return exact.specificGasConstant();
    }

    @Override
    public double heatCapacityRatio() {
        return exact.heatCapacityRatio();
    }

    @Override
    public double vapourViscosity() {
        return exact.vapourViscosity();
    }

    @Override
    public double usualBoilerPressure() {
        return exact.usualBoilerPressure();
    }

    @Override
    public double[] usualBoilerPressureRange() {
        return exact.usualBoilerPressureRange();
    }

    @Override
    public OptionalDouble bulkLimit() {
        return exact.bulkLimit();
    }

    @Override
    public OptionalDouble filmLimit() {
        return exact.filmLimit();
    }

    @Override
    public OptionalDouble airAdmissionLimit() {
        return exact.airAdmissionLimit();
    }

    @Override
    public OptionalDouble dissolvedAir() {
        return exact.dissolvedAir();
    }

    @Override
    public boolean resistsOxidation() {
        return exact.resistsOxidation();
    }

    @Override
    public boolean isToxicVapour() {
        return exact.isToxicVapour();
    }

    private void check(FluidProperty property, double temperatureK) {
        if (!(temperatureK >= lowestK && temperatureK <= highestK)) {
            throw Outside.temperature(exact.title(), property.title(), temperatureK, lowestK, highestK);
        }
    }

    private HermiteTable table(DoubleUnaryOperator function) {
        return HermiteTable.of(lowestK, highestK, intervals(highestK - lowestK, GRID_STEP_K), function);
    }

    private HermiteTable table(DoubleUnaryOperator function, DoubleUnaryOperator slope) {
        return HermiteTable.of(lowestK, highestK, intervals(highestK - lowestK, GRID_STEP_K), function, slope);
    }

    private static int intervals(double span, double step) {
        return Math.max(FEWEST_INTERVALS, (int) Math.ceil(span / step));
    }

    /** Temperature against the logarithm of pressure: the inverse of the pressure table, not of the exact relation. */
    private HermiteTable inverse(HermiteTable pressure) {
        double lowLn = pressure.value(lowestK);
        double highLn = pressure.value(highestK);
        int intervals = intervals(highLn - lowLn, GRID_STEP_LN_PRESSURE);
        double[] temperatures = new double[intervals + 1];
        double[] slopes = new double[intervals + 1];
        double t = lowestK;
        for (int i = 0; i <= intervals; i++) {
            double ln = lowLn + (highLn - lowLn) * i / intervals;
            t = invert(pressure, ln, t);
            temperatures[i] = t;
            slopes[i] = 1 / pressure.slope(t);
        }
        return new HermiteTable(lowLn, highLn, temperatures, slopes);
    }

    /** Newton from the node below: ln p rises with T and is concave, so the steps stay between the node and the root. */
    private double invert(HermiteTable pressure, double ln, double startK) {
        double t = startK;
        for (int round = 0; round < 50; round++) {
            double step = (ln - pressure.value(t)) / pressure.slope(t);
            t = Math.max(lowestK, Math.min(highestK, t + step));
            if (Math.abs(step) < 1e-12 * t) {
                return t;
            }
        }
        throw new ComputationException(
                Message.of(MessageKey.FLUID_SATURATION_NOT_FOUND, exact.title(), Numbers.text(Math.exp(ln))));
    }

    private double exactFilmGroup(double t) {
        double density = exact.liquidDensity(t);
        double conductivity = exact.liquidConductivity(t);
        return Math.sqrt(Math.sqrt(density
                * density
                * PhysicalConstants.STANDARD_GRAVITY
                * conductivity
                * conductivity
                * conductivity
                / exact.liquidViscosity(t)));
    }
}
