package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Mercury against M. L. Huber, A. Laesecke and D. G. Friend, Correlation for the vapor pressure of mercury, Ind. Eng. Chem.
 * Res. 45 (2006) 7351 (NISTIR 6643), and against M. P. Vukalovich and others, Thermophysical properties of mercury (1971).
 * Calorimetric and vapour-pressure latent heats are independent of each other, so their agreement tests the use of
 * Clausius and Clapeyron's relation.
 */
@Tag("validation")
class MercuryTest {
    private final FluidRecord mercury = FluidLibrary.builtIn().find("mercury");

    /** Normal boiling point, 629.77 K (Huber and others). */
    @Test
    void boilsAtTheNormalBoilingPoint() {
        assertThat(mercury.vapourPressure(629.77)).isCloseTo(101325, within(1e-4 * 101325));
        assertThat(mercury.saturationTemperature(101325)).isCloseTo(629.77, within(0.005));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/huber-2006/mercury.csv", useHeadersInDisplayName = true)
    void vapourPressureAndLatentHeat(double t, double p, double slopeHeat, double latent) {
        double slope = slopeHeat(t);
        assertThat(mercury.vapourPressure(t) / p).isCloseTo(1, within(5e-5));
        assertThat(slope * mercury.molarMass() / 1000).isCloseTo(slopeHeat, within(1e-4 * slopeHeat));
        assertThat(mercury.latentHeat(t) / (latent * 1000)).isCloseTo(1, within(5e-4));
    }

    /** Slope of the equation of 2006 against calorimetry, 300 to 500 K. */
    @Test
    void slopeOfTheVapourPressureGivesTheCalorimetricLatentHeat() {
        for (double t = 300; t <= 500; t += 5) {
            assertThat(slopeHeat(t) / mercury.latentHeat(t)).as("at %s K", t).isCloseTo(1, within(2e-3));
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/vukalovich-1971/saturated-mercury.csv", useHeadersInDisplayName = true)
    void olderTable(double t, double p, double density, double cp) {
        assertThat(mercury.vapourPressure(t) / p).isCloseTo(1, within(0.0105));
        assertThat(mercury.liquidDensity(t) / density).isCloseTo(1, within(5e-4));
        assertThat(mercury.liquidSpecificHeat(t) / (cp * 1000)).isCloseTo(1, within(5e-4));
    }

    /**
     * Viscosity of the liquid by Viswanath and Natarajan, Data book on the viscosity of liquids (1989): 1.557, 1.526, 1.245
     * mPa s at 20, 25, 100 degrees Celsius; expansion 1.82e-4 per K and conductivity 8.25 to 8.5, 9.5 and 11 W/(m K) at 25,
     * 100 and 200 degrees Celsius from memory.
     */
    @Test
    void liquid() {
        assertThat(mercury.liquidViscosity(293.15)).isCloseTo(1.557e-3, within(1e-6));
        assertThat(mercury.liquidViscosity(298.15)).isCloseTo(1.526e-3, within(1e-6));
        assertThat(mercury.liquidViscosity(373.15)).isCloseTo(1.245e-3, within(1e-6));
        assertThat(mercury.liquidExpansion(298.15)).isCloseTo(1.82e-4, within(5e-6));
        assertThat(mercury.liquidConductivity(298.15)).isBetween(8.25, 8.5);
        assertThat(mercury.liquidConductivity(373.15)).isCloseTo(9.5, within(0.1));
        assertThat(mercury.liquidConductivity(473.15)).isCloseTo(11, within(0.1));
        assertThat(mercury.surfaceTension(298.15)).isCloseTo(0.485, within(1e-6));
    }

    /**
     * Viscosity of the vapour against kinetic theory: Chapman and Enskog's relation with Neufeld's collision integral, and
     * 0.2969 nm and 750 K for mercury (Poling, Prausnitz and O'Connell, 5th ed. 2001, equations 9-3.9 and 9-4.3, appendix B).
     */
    @Test
    void vapourViscosityByKineticTheory() {
        double t = 450;
        double reduced = t / 750;
        double integral = 1.16145 * Math.pow(reduced, -0.14874)
                + 0.52487 * Math.exp(-0.77320 * reduced)
                + 2.16178 * Math.exp(-2.43787 * reduced);
        double viscosity = 26.69e-7 * Math.sqrt(200.592 * t) / (2.969 * 2.969 * integral);
        assertThat(mercury.vapourViscosity()).isCloseTo(viscosity, within(0.03 * viscosity));
    }

    /** Heat from the slope of the vapour pressure, vapour taken as an ideal gas, J/kg. */
    private double slopeHeat(double t) {
        return mercury.specificGasConstant() * t * t * mercury.vapourPressureSlope(t) / mercury.vapourPressure(t);
    }
}
