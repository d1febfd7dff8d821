package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Air against Incropera and others, Fundamentals of Heat and Mass Transfer, table A.4 (from memory): K, kg/m3, J/(kg K),
 * viscosity in 1e-7 Pa s, conductivity in mW/(m K), Prandtl number. The table's densities are those of an ideal gas at
 * 1 bar, not at one atmosphere.
 */
class AirTest {
    @ParameterizedTest
    @CsvSource({
        "250, 1.3947, 1006, 159.6, 22.3, 0.720",
        "300, 1.1614, 1007, 184.6, 26.3, 0.707",
        "350, 0.9950, 1009, 208.2, 30.0, 0.700",
        "400, 0.8711, 1014, 230.1, 33.8, 0.690",
        "500, 0.6964, 1030, 270.1, 40.7, 0.684",
        "600, 0.5804, 1051, 305.8, 46.9, 0.685",
        "800, 0.4354, 1099, 369.8, 57.3, 0.709",
        "900, 0.3868, 1121, 398.1, 62.0, 0.720"
    })
    void agreesWithTheTable(
            double t, double density, double heat, double viscosity, double conductivity, double prandtl) {
        assertThat(Air.density(t) / 1.01325 / density).isCloseTo(1, within(0.001));
        assertThat(Air.specificHeat(t) / heat).isCloseTo(1, within(0.001));
        assertThat(Air.viscosity(t) / (viscosity * 1e-7)).isCloseTo(1, within(0.021));
        assertThat(Air.conductivity(t) / (conductivity * 1e-3)).isCloseTo(1, within(0.016));
        assertThat(Air.prandtl(t) / prandtl).isCloseTo(1, within(0.015));
    }

    @Test
    void refusesTemperaturesOutsideItsSpan() {
        for (double t : new double[] {249.9, 900.1, Double.NaN}) {
            assertThatThrownBy(() -> Air.viscosity(t))
                    .isInstanceOf(ComputationException.class)
                    .hasMessageContaining("air: the viscosity")
                    .hasMessageContaining("250 to 900 K");
        }
    }
}
