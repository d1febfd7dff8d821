package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.errors.ComputationException;
import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;

/** The water tables against the library they are made from. */
class WaterTest {
    private static final double P = Water.TABLE_PRESSURE_PA;

    /** A last digit may differ: powers and exponentials are not the same to the last bit on every machine. */
    @Test
    void tableOfTheProgramIsTheLibrarys() throws Exception {
        WaterTableWriter writer = new WaterTableWriter();
        Water.Table table = Water.Table.read();
        for (int c = 0; c < Water.Table.COLUMNS; c++) {
            double[] column = table.column(c);
            assertThat(column).hasSize(Water.Table.INTERVALS + 1);
            for (int i = 0; i < column.length; i++) {
                double of = writer.value(c, WaterTableWriter.temperature(i));
                assertThat(column[i]).as("column %d line %d", c, i).isCloseTo(of, within(1e-12 * Math.abs(of) + 1e-15));
            }
        }
    }

    @Test
    void tablesAreWithinOneInAMillionOfTheLibrary() throws Exception {
        IF97 library = new IF97(IF97.UnitSystem.SI);
        double zero = library.specificEnthalpyPT(P, 273.15);
        for (double t = 273.15; t <= 423.15; t += 0.0971) {
            assertThat(Water.density(t) / library.densityPT(P, t)).isCloseTo(1, within(1e-6));
            assertThat(Water.specificHeat(t) / library.isobaricHeatCapacityPT(P, t))
                    .isCloseTo(1, within(1e-6));
            assertThat(Water.enthalpy(t)).isCloseTo(library.specificEnthalpyPT(P, t) - zero, within(0.01));
            assertThat(Water.viscosity(t) / library.dynamicViscosityPT(P, t)).isCloseTo(1, within(1e-6));
            assertThat(Water.conductivity(t) / library.thermalConductivityPT(P, t))
                    .isCloseTo(1, within(1e-6));
            assertThat(Water.prandtl(t) / library.PrandtlPT(P, t)).isCloseTo(1, within(3e-6));
            assertThat(Water.expansion(t)).isCloseTo(library.isobaricCubicExpansionCoefficientPT(P, t), within(1e-9));
            double latent = library.specificEnthalpySaturatedVapourT(t) - library.specificEnthalpySaturatedLiquidT(t);
            assertThat(Water.latentHeat(t) / latent).isCloseTo(1, within(1e-6));
        }
    }

    @Test
    void specificHeatIsTheDerivativeOfEnthalpy() {
        for (double t = 274; t < 423; t += 0.61) {
            double difference = (Water.enthalpy(t + 1e-3) - Water.enthalpy(t - 1e-3)) / 2e-3;
            assertThat(Water.specificHeat(t)).isCloseTo(difference, within(0.01));
        }
        assertThat(Water.enthalpy(273.15)).isZero();
    }

    @Test
    void boilsAndFreezesWhereItShould() {
        assertThat(Water.boilingTemperature(101325)).isCloseTo(373.124, within(0.001));
        assertThat(Water.latentHeat(373.15)).isCloseTo(2.257e6, within(1e3));
        assertThat(Water.FREEZING_K).isEqualTo(273.15);
    }

    @Test
    void saturationIsTheLibrarys() throws Exception {
        IF97 library = new IF97(IF97.UnitSystem.SI);
        for (double t = 273.15; t <= 640; t += 1.37) {
            double p = library.saturationPressureT(t);
            assertThat(WaterSaturation.temperature(p) / library.saturationTemperatureP(p))
                    .isCloseTo(1, within(1e-12));
        }
        for (double p : new double[] {0, 611, 22.1e6, Double.NaN}) {
            assertThat(WaterSaturation.temperature(p)).isNaN();
        }
    }

    @Test
    void refusesSteamIceAndNonsense() {
        for (double t : new double[] {273.149, 423.16, Double.NaN}) {
            assertThatThrownBy(() -> Water.density(t))
                    .isInstanceOf(ComputationException.class)
                    .hasMessageContaining("water: the density")
                    .hasMessageContaining("273.15 to 423.15 K");
        }
        assertThatThrownBy(() -> Water.boilingTemperature(0)).isInstanceOf(ComputationException.class);
        assertThatThrownBy(() -> Water.boilingTemperature(1e7)).isInstanceOf(ComputationException.class);
    }
}
