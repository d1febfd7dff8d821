package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fluids as their files state them: consistency of the relations among themselves. */
class FluidRecordTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    static List<FluidRecord> fluids() {
        return LIBRARY.ids().stream().map(LIBRARY::find).toList();
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void derivedPropertiesAreDerivatives(FluidRecord fluid) {
        double low = fluid.lowestTemperature();
        double high = fluid.highestTemperature();
        for (double t = low + 1; t < high - 1; t += 3.7) {
            assertThat(fluid.vapourPressureSlope(t) / slope(fluid::vapourPressure, t))
                    .isCloseTo(1, within(1e-6));
            assertThat(fluid.liquidSpecificHeat(t) / slope(fluid::liquidEnthalpy, t))
                    .isCloseTo(1, within(1e-6));
            assertThat(fluid.liquidExpansion(t) / (-slope(fluid::liquidDensity, t) / fluid.liquidDensity(t)))
                    .isCloseTo(1, within(1e-5));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void enthalpyIsCountedFromTheFreezingPointOfWater(FluidRecord fluid) {
        double t = Math.max(273.15, fluid.lowestTemperature());
        double area = 0;
        double step = (t - 273.15) / 1000;
        for (int i = 0; i < 1000; i++) {
            double middle = Math.max(fluid.lowestTemperature(), 273.15 + (i + 0.5) * step);
            area += fluid.liquidSpecificHeat(middle) * step;
        }
        assertThat(fluid.liquidEnthalpy(t)).isCloseTo(area, within(1e-9 + 0.03 * area));
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void saturationTemperatureIsTheInverseOfTheVapourPressure(FluidRecord fluid) {
        double low = fluid.lowestTemperature();
        double high = fluid.highestTemperature();
        for (int i = 0; i <= 500; i++) {
            double t = i == 500 ? high : low + (high - low) * i / 500;
            assertThat(fluid.saturationTemperature(fluid.vapourPressure(t)) / t).isCloseTo(1, within(1e-12));
        }
    }

    @ParameterizedTest
    @MethodSource("fluids")
    void outsideTheSpanIsRefused(FluidRecord fluid) {
        for (double t : new double[] {
            Math.nextDown(fluid.lowestTemperature()), Math.nextUp(fluid.highestTemperature()), Double.NaN
        }) {
            assertThatThrownBy(() -> fluid.liquidDensity(t))
                    .isInstanceOf(ComputationException.class)
                    .hasMessageContaining("liquid density");
            assertThatThrownBy(() -> fluid.vapourPressureSlope(t)).isInstanceOf(ComputationException.class);
        }
        for (double p : new double[] {0, -1, Double.NaN, 1e9}) {
            assertThatThrownBy(() -> fluid.saturationTemperature(p)).isInstanceOf(ComputationException.class);
        }
    }

    @Test
    void extrapolationIsNoted() {
        FluidRecord oil = LIBRARY.find("704-type");
        assertThat(oil.rangeNotes(313.15, 313.15)).isEmpty();
        List<String> notes =
                oil.rangeNotes(288.15, 523.15).stream().map(Message::text).toList();
        assertThat(notes)
                .singleElement()
                .asString()
                .startsWith(
                        "Tetramethyl tetraphenyl trisiloxane (704 type) was used from 15 to 250 degC, beyond what its"
                                + " sources vouch for (degC): ")
                .contains("vapour pressure (20 to 230)");
    }

    /** The line usually printed with the 704 type lies within the uncertainty of the one in use, over its whole range. */
    @Test
    void alternativeLineOfThe704TypeIsWithinTheUncertaintyOfTheOther() {
        PropertyValue pressure = LIBRARY.find("704-type").value(FluidProperty.VAPOUR_PRESSURE);
        PropertyValue.Figure used = pressure.figures().get(0);
        PropertyValue.Figure other = pressure.figures().get(1);
        assertThat(used.coefficients()).containsExactly(11.308, 5667.0);
        assertThat(other.coefficients()).containsExactly(11.025, 5570.0);
        double factor = used.provenance().uncertainty().orElseThrow().value();
        for (double t = 293.15; t <= 503.15; t += 5) {
            assertThat(other.relation().value(t) / used.relation().value(t)).isBetween(1 / factor, factor);
        }
    }

    @Test
    void limitsAreThereOrExplicitlyNot() {
        FluidRecord mercury = LIBRARY.find("mercury");
        assertThat(mercury.bulkLimit()).isEmpty();
        assertThat(mercury.filmLimit()).isEmpty();
        assertThat(mercury.isToxicVapour()).isTrue();
        assertThat(mercury.usualBoilerPressure()).isEqualTo(1000);
        assertThat(mercury.usualBoilerPressureRange()).containsExactly(500, 3000);
        FluidRecord oil = LIBRARY.find("704-type");
        assertThat(oil.bulkLimit()).hasValue(523.15);
        assertThat(oil.filmLimit()).hasValue(573.15);
        assertThat(oil.airAdmissionLimit()).hasValue(353.15);
        assertThat(oil.dissolvedAir()).hasValue(0.17);
        assertThat(oil.resistsOxidation()).isTrue();
        assertThat(LIBRARY.find("medium-hydrocarbon").resistsOxidation()).isFalse();
    }

    private static double slope(DoubleUnaryOperator function, double t) {
        double step = 1e-3;
        return (function.applyAsDouble(t + step) - function.applyAsDouble(t - step)) / (2 * step);
    }
}
