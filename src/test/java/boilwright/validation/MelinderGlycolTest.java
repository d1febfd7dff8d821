package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.Glycol;
import boilwright.fluid.GlycolWater;
import boilwright.fluid.Water;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Glycol in water: Melinder's polynomials against another edition of his curves, against one value of the ASHRAE Handbook,
 * Fundamentals 2005, and against pure water. Each is held within the uncertainty that the data file states.
 */
@Tag("validation")
class MelinderGlycolTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/melinder/glycols.csv", useHeadersInDisplayName = true)
    void anotherEdition(
            Glycol glycol,
            double percent,
            double celsius,
            Double density,
            double cp,
            Double conductivity,
            double viscosity) {
        GlycolWater mixture = GlycolWater.of(glycol, percent / 100);
        double t = celsius + 273.15;
        assertThat(mixture.specificHeat(t) / cp).isCloseTo(1, within(mixture.uncertainty("specificHeat")));
        assertThat(mixture.viscosity(t) / (viscosity * 1e-3)).isCloseTo(1, within(mixture.uncertainty("viscosity")));
        if (density != null && conductivity != null) {
            assertThat(mixture.density(t) / density).isCloseTo(1, within(mixture.uncertainty("density")));
            assertThat(mixture.conductivity(t) / conductivity)
                    .isCloseTo(1, within(mixture.uncertainty("conductivity")));
        }
    }

    /** Freezing points of the other edition, percent by mass and degrees Celsius. */
    @ParameterizedTest
    @CsvSource({
        "ETHYLENE, 10, -3.401",
        "ETHYLENE, 20, -7.932",
        "ETHYLENE, 30, -14.597",
        "ETHYLENE, 40, -23.874",
        "ETHYLENE, 50, -36.028",
        "ETHYLENE, 55, -43.283",
        "PROPYLENE, 15, -5.004",
        "PROPYLENE, 25, -9.971",
        "PROPYLENE, 35, -16.575",
        "PROPYLENE, 45, -26.174",
        "PROPYLENE, 55, -41.750"
    })
    void freezingPoints(Glycol glycol, double percent, double celsius) {
        GlycolWater mixture = GlycolWater.of(glycol, percent / 100);
        assertThat(mixture.freezingK() - 273.15).isCloseTo(celsius, within(mixture.uncertainty("freezing")));
    }

    /**
     * ASHRAE Handbook, Fundamentals 2005, chapter 21, table 13: 40 percent propylene glycol by volume at 35 degrees Celsius
     * has 2.6 mPa s (as quoted in a public discussion). 40 percent by volume are 41.1 by mass with densities of 1036 and 998
     * kg/m3 at 20 degrees (from memory).
     */
    @ParameterizedTest
    @CsvSource("0.4, 35, 2.6")
    void viscosityOfTheHandbook(double volumeShare, double celsius, double viscosity) {
        double mass = volumeShare * 1036 / (volumeShare * 1036 + (1 - volumeShare) * 998);
        assertThat(GlycolWater.of(Glycol.PROPYLENE, mass).viscosity(celsius + 273.15) * 1e3)
                .isCloseTo(viscosity, within(0.06));
    }

    /**
     * Drawn on from 5 and 10 percent to none, the polynomials must run into IAPWS water. It decides between copies
     * that differ in signs: the other reading is 20 percent off at 100 degrees. A straight line misses the curve by up to 2 percent.
     */
    @ParameterizedTest
    @EnumSource(Glycol.class)
    void runIntoWater(Glycol glycol) {
        GlycolWater five = GlycolWater.of(glycol, 0.05);
        GlycolWater ten = GlycolWater.of(glycol, 0.1);
        for (double t = 274.15; t <= 373.15; t += 9) {
            double viscosity = five.viscosity(t) * five.viscosity(t) / ten.viscosity(t);
            assertThat(viscosity / Water.viscosity(t)).isCloseTo(1, within(0.05));
            assertThat((2 * five.density(t) - ten.density(t)) / Water.density(t))
                    .isCloseTo(1, within(0.002));
            assertThat((2 * five.specificHeat(t) - ten.specificHeat(t)) / Water.specificHeat(t))
                    .isCloseTo(1, within(0.02));
            assertThat((2 * five.conductivity(t) - ten.conductivity(t)) / Water.conductivity(t))
                    .isCloseTo(1, within(0.02));
        }
    }
}
