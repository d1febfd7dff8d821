package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * n-Hexadecane and n-eicosane against Perry's Chemical Engineers' Handbook, 8th ed. (2008), tables 2-8, 2-30, 2-150, 2-153,
 * 2-313 and 2-315, and the VDI Heat Atlas, 2nd ed. (2010). Vapour pressure and latent heat are separate fits there, so their
 * agreement by Clausius and Clapeyron's relation is a check of both.
 */
@Tag("validation")
class PerryAlkanesTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/perry-8/alkanes.csv", useHeadersInDisplayName = true)
    void liquid(
            String id,
            double celsius,
            double density,
            double expansion,
            double cp,
            double conductivity,
            double viscosity,
            double tension,
            double latent) {
        FluidRecord fluid = LIBRARY.find(id);
        double t = celsius + 273.15;
        assertThat(fluid.liquidDensity(t)).isCloseTo(density, within(0.051));
        assertThat(fluid.liquidExpansion(t)).isCloseTo(expansion * 1e-4, within(0.051e-4));
        assertThat(fluid.liquidSpecificHeat(t)).isCloseTo(cp * 1000, within(0.51));
        assertThat(fluid.liquidConductivity(t)).isCloseTo(conductivity, within(0.51e-4));
        assertThat(fluid.liquidViscosity(t) / (viscosity * 1e-3)).isCloseTo(1, within(2.5e-3));
        assertThat(fluid.surfaceTension(t)).isCloseTo(tension * 1e-3, within(0.051e-3));
        assertThat(fluid.latentHeat(t)).isCloseTo(latent * 1000, within(51.0));
    }

    /** Slope of table 2-8 against table 2-150 at 200 degrees Celsius: 0.5 percent for n-hexadecane, 1 for n-eicosane. */
    @ParameterizedTest
    @CsvSource({"n-hexadecane, 0.005", "n-eicosane, 0.01"})
    void slopeOfTheVapourPressureGivesTheLatentHeat(String id, double tolerance) {
        FluidRecord fluid = LIBRARY.find(id);
        double t = 473.15;
        double slope = fluid.specificGasConstant() * t * t * fluid.vapourPressureSlope(t) / fluid.vapourPressure(t);
        assertThat(slope / fluid.latentHeat(t)).isCloseTo(1, within(tolerance));
    }

    /**
     * Vapour pressures in Torr of Perry's table 2-8, evaluated by a second implementation, and n-hexadecane's normal boiling
     * point, 559.90 K (reference equation of state).
     */
    @ParameterizedTest
    @CsvSource({
        "n-hexadecane, 25, 1.50e-3",
        "n-hexadecane, 100, 0.748",
        "n-hexadecane, 150, 10.5",
        "n-hexadecane, 200, 73.2",
        "n-hexadecane, 250, 319",
        "n-eicosane, 100, 0.0384",
        "n-eicosane, 150, 1.04",
        "n-eicosane, 200, 11.5",
        "n-eicosane, 250, 69.5"
    })
    void vapourPressure(String id, double celsius, double torr) {
        double pressure = LIBRARY.find(id).vapourPressure(celsius + 273.15) * 760 / 101325;
        assertThat(pressure / torr).isCloseTo(1, within(5e-3));
    }

    @Test
    void hexadecaneBoilsAtItsNormalBoilingPoint() {
        assertThat(LIBRARY.find("n-hexadecane").saturationTemperature(101325)).isCloseTo(559.90, within(0.6));
    }

    /**
     * A third equation for n-hexadecane: Antoine constants of Poling, Prausnitz and O'Connell, 5th ed. (2001), appendix A, 431
     * to 594 K; said to agree with Perry to 1.4 percent between 150 and 250 degrees Celsius.
     */
    @Test
    void hexadecaneAgreesWithAnotherHandbook() {
        FluidRecord fluid = LIBRARY.find("n-hexadecane");
        for (double t = 431.5; t <= 523.15; t += 5) {
            double poling = Math.pow(10, 9.15357 - 1830.51 / (t - 118.70));
            assertThat(fluid.vapourPressure(t) / poling).isCloseTo(1, within(0.015));
        }
    }
}
