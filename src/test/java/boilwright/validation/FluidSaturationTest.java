package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.FluidLibrary;
import boilwright.fluid.FluidRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every pump fluid's vapour pressure, latent heat and heat capacity ratio: against temperatures evaluated by a second
 * implementation of the equations (trade figures from memory, Landolt-Boernstein IV/20, Perry 8th ed. table 2-8, Huber and
 * others 2006), against trade figures, and against bounds that hold for any heavy vapour.
 */
@Tag("validation")
class FluidSaturationTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();
    private static final double PA_PER_TORR = 101325.0 / 760;
    private static final String[] COLUMNS = {
        "704-type",
        "705-type",
        "five-ring-polyphenyl-ether",
        "medium-hydrocarbon",
        "di-2-ethylhexyl-phthalate",
        "di-n-butyl-phthalate",
        "n-hexadecane",
        "n-eicosane",
        "mercury"
    };

    static Iterable<String> workingFluids() {
        return LIBRARY.workingFluids();
    }

    /** Within 0.15 K: the table was made before the coefficients of the lines were rounded to the digits on file. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/fluid-saturation/temperatures.csv", numLinesToSkip = 1)
    void temperatureAtAPressure(ArgumentsAccessor row) {
        double pressure = row.getDouble(0) * PA_PER_TORR;
        for (int i = 0; i < COLUMNS.length; i++) {
            if (row.get(i + 1) != null) {
                assertThat(LIBRARY.find(COLUMNS[i]).saturationTemperature(pressure) - 273.15)
                        .as("%s at %s Torr", COLUMNS[i], row.get(0))
                        .isCloseTo(row.getDouble(i + 1), within(0.15));
            }
        }
    }

    /** End points on which the trade's tables agree (from memory), in degrees Celsius and Torr. */
    @ParameterizedTest
    @CsvSource({
        "704-type, 25, 2e-8",
        "704-type, 215, 0.5",
        "705-type, 25, 3e-10",
        "705-type, 245, 0.5",
        "five-ring-polyphenyl-ether, 25, 4e-10",
        "five-ring-polyphenyl-ether, 275, 0.5",
        "medium-hydrocarbon, 25, 5e-8",
        "medium-hydrocarbon, 200, 1"
    })
    void tradeEndPoints(String id, double celsius, double torr) {
        double pressure = LIBRARY.find(id).vapourPressure(celsius + 273.15) / PA_PER_TORR;
        assertThat(pressure / torr).isCloseTo(1, within(0.02));
    }

    /** The latent heat never differs much from the slope of the vapour pressure at 200 degrees Celsius: 0.85 to 1.02 of it. */
    @ParameterizedTest
    @MethodSource("workingFluids")
    void latentHeatIsNearTheSlopeOfTheVapourPressure(String id) {
        FluidRecord fluid = LIBRARY.find(id);
        double t = 473.15;
        double slope = fluid.specificGasConstant() * t * t * fluid.vapourPressureSlope(t) / fluid.vapourPressure(t);
        assertThat(fluid.latentHeat(t) / slope).isBetween(0.85, 1.02);
    }

    /** The slope itself against 2.302585 B R / M by hand, for the lines log10 p = A - B/T. */
    @ParameterizedTest
    @CsvSource({
        "704-type, 5667, 484.81",
        "705-type, 6476, 546.88",
        "five-ring-polyphenyl-ether, 5947, 446.50",
        "medium-hydrocarbon, 5885, 420"
    })
    void slopeOfAStraightLine(String id, double b, double gramPerMol) {
        FluidRecord fluid = LIBRARY.find(id);
        double t = 473.15;
        double slope = fluid.specificGasConstant() * t * t * fluid.vapourPressureSlope(t) / fluid.vapourPressure(t);
        double byHand = 2.302585 * b * 8.314462618 / gramPerMol * 1000;
        assertThat(slope / byHand).isCloseTo(1, within(1e-6));
        assertThat(fluid.latentHeat(t) / byHand).isBetween(0.85, 1.02);
    }

    /** Large molecules store heat in many ways, so their ratio is below 1.03; a monatomic vapour has 5/3. */
    @ParameterizedTest
    @MethodSource("workingFluids")
    void heatCapacityRatio(String id) {
        double ratio = LIBRARY.find(id).heatCapacityRatio();
        if (id.equals("mercury")) {
            assertThat(ratio).isCloseTo(1.6667, within(5e-5));
        } else {
            assertThat(ratio).isBetween(1.005, 1.03);
        }
    }

    /** Kinematic viscosities and densities as the trade quotes them (from memory): degrees Celsius, cSt, tolerance. */
    @ParameterizedTest
    @CsvSource({
        "704-type, 25, 39, 0.01",
        "704-type, 20, 47, 0.08",
        "704-type, 100, 4.15, 0.21",
        "705-type, 25, 175, 0.01",
        "705-type, 100, 6.5, 0.24",
        "five-ring-polyphenyl-ether, 38, 363, 0.01",
        "five-ring-polyphenyl-ether, 99, 13.1, 0.01",
        "five-ring-polyphenyl-ether, 20, 2400, 0.1",
        "medium-hydrocarbon, 20, 135, 0.01",
        "medium-hydrocarbon, 100, 8.5, 0.06",
        "di-2-ethylhexyl-phthalate, 0, 386, 0.07",
        "di-2-ethylhexyl-phthalate, 37.8, 31, 0.04",
        "di-2-ethylhexyl-phthalate, 100, 5, 0.02"
    })
    void viscosity(String id, double celsius, double centistokes, double tolerance) {
        FluidRecord fluid = LIBRARY.find(id);
        double t = celsius + 273.15;
        double kinematic = fluid.liquidViscosity(t) / fluid.liquidDensity(t) * 1e6;
        assertThat(kinematic / centistokes).isCloseTo(1, within(tolerance));
    }

    /** Densities: dibutyl phthalate by Kemppinen and Gokcen (1956), the others quoted by the trade (from memory). */
    @ParameterizedTest
    @CsvSource({
        "704-type, 25, 1070",
        "705-type, 25, 1097",
        "five-ring-polyphenyl-ether, 25, 1198",
        "medium-hydrocarbon, 20, 875",
        "di-2-ethylhexyl-phthalate, 20, 986",
        "di-n-butyl-phthalate, 20, 1046.5"
    })
    void density(String id, double celsius, double density) {
        assertThat(LIBRARY.find(id).liquidDensity(celsius + 273.15)).isCloseTo(density, within(0.01));
    }

    /** Surface tensions at about room temperature, mN/m, as quoted by the trade (from memory). */
    @ParameterizedTest
    @CsvSource({
        "704-type, 25, 33.9",
        "705-type, 25, 36.5",
        "five-ring-polyphenyl-ether, 23, 49.9",
        "di-2-ethylhexyl-phthalate, 25, 32.0",
        "di-n-butyl-phthalate, 20, 33.8"
    })
    void surfaceTension(String id, double celsius, double tension) {
        assertThat(LIBRARY.find(id).surfaceTension(celsius + 273.15) * 1000).isCloseTo(tension, within(0.05));
    }

    /** Changing the fluid of a pump from the 704 to the 705 type makes its boiler hotter at the same pressure. */
    @Test
    void heavierSiliconeBoilsHotter() {
        double lighter = LIBRARY.find("704-type").saturationTemperature(65);
        assertThat(LIBRARY.find("705-type").saturationTemperature(65)).isGreaterThan(lighter + 20);
    }
}
