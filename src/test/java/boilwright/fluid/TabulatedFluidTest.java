package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import java.util.List;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The fast tables against the relations they stand for. */
class TabulatedFluidTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();
    private static final int POINTS = 2503;

    static Stream<TabulatedFluid> fluids() {
        return LIBRARY.ids().stream().map(id -> TabulatedFluid.of(LIBRARY.find(id)));
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void everyPropertyIsWithinOneInTenMillionOfTheExactOne(TabulatedFluid table) {
        WorkingFluid exact = LIBRARY.find(table.id());
        List<BiFunction<WorkingFluid, Double, Double>> properties = List.of(
                WorkingFluid::vapourPressure,
                WorkingFluid::vapourPressureSlope,
                WorkingFluid::latentHeat,
                WorkingFluid::liquidSpecificHeat,
                WorkingFluid::liquidDensity,
                WorkingFluid::liquidExpansion,
                WorkingFluid::liquidConductivity,
                WorkingFluid::liquidViscosity,
                WorkingFluid::surfaceTension);
        for (double t : temperatures(table)) {
            for (int i = 0; i < properties.size(); i++) {
                double wanted = properties.get(i).apply(exact, t);
                assertThat(properties.get(i).apply(table, t) / wanted)
                        .as("%s, property %d at %s K", table.id(), i, t)
                        .isCloseTo(1, within(1e-7));
            }
            assertThat(table.liquidEnthalpy(t))
                    .isCloseTo(exact.liquidEnthalpy(t), within(1e-7 * Math.abs(exact.liquidEnthalpy(t)) + 1e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void saturationTemperatureIsWithinOneInTenMillionOfTheExactOne(TabulatedFluid table) {
        for (double t : temperatures(table)) {
            double p = LIBRARY.find(table.id()).vapourPressure(t);
            assertThat(table.saturationTemperature(p) / t).isCloseTo(1, within(1e-7));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void saturationPressureAndTemperatureAreInversesAndRise(TabulatedFluid table) {
        double lastPressure = 0;
        double lastTemperature = 0;
        for (double t : temperatures(table)) {
            double p = table.vapourPressure(t);
            double back = table.saturationTemperature(p);
            assertThat(back / t).isCloseTo(1, within(1e-9));
            assertThat(table.vapourPressure(back) / p).isCloseTo(1, within(1e-9));
            assertThat(p).isGreaterThan(lastPressure);
            assertThat(back).isGreaterThan(lastTemperature);
            lastPressure = p;
            lastTemperature = back;
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void specificHeatIsTheDerivativeOfEnthalpy(TabulatedFluid table) {
        double step = 1e-3;
        for (double t = table.lowestTemperature() + 0.1; t < table.highestTemperature() - 0.1; t += 0.837) {
            double difference = (table.liquidEnthalpy(t + step) - table.liquidEnthalpy(t - step)) / (2 * step);
            assertThat(table.liquidSpecificHeat(t)).isCloseTo(difference, within(1e-6 * difference));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void filmGroupIsMadeOfTheLiquidsProperties(TabulatedFluid table) {
        for (double t : temperatures(table)) {
            double density = table.liquidDensity(t);
            double wanted = Math.pow(
                    density * density * 9.80665 * Math.pow(table.liquidConductivity(t), 3) / table.liquidViscosity(t),
                    0.25);
            assertThat(table.filmGroup(t) / wanted).isCloseTo(1, within(2e-7));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void endsOfTheSpanAnswerAndBeyondIsRefused(TabulatedFluid table) {
        double low = table.lowestTemperature();
        double high = table.highestTemperature();
        for (double end : new double[] {low, high}) {
            double p = table.vapourPressure(end);
            assertThat(table.saturationTemperature(p)).isCloseTo(end, within(1e-9 * end));
        }
        for (double t : new double[] {low - 1e-9, Math.nextUp(high), Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> table.vapourPressure(t))
                    .isInstanceOf(ComputationException.class)
                    .hasMessageContaining("vapour pressure");
            assertThatThrownBy(() -> table.liquidViscosity(t)).isInstanceOf(ComputationException.class);
            assertThatThrownBy(() -> table.liquidEnthalpy(t)).isInstanceOf(ComputationException.class);
        }
        double p = table.vapourPressure(high) * 1.000001;
        for (double outside : new double[] {p, 0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> table.saturationTemperature(outside)).isInstanceOf(ComputationException.class);
        }
    }

    @Test
    void refusalNamesPropertyValueAndSpan() {
        TabulatedFluid table = TabulatedFluid.of(LIBRARY.find("704-type"));
        assertThatThrownBy(() -> table.latentHeat(912.5))
                .hasMessageContaining("latent heat")
                .hasMessageContaining("912.5 K")
                .hasMessageContaining("240 to 800 K");
    }

    private static double[] temperatures(TabulatedFluid table) {
        double low = table.lowestTemperature();
        double high = table.highestTemperature();
        double[] temperatures = new double[POINTS];
        for (int i = 0; i < POINTS; i++) {
            temperatures[i] = low + (high - low) * i / (POINTS - 1.0);
        }
        return temperatures;
    }
}
