package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.fluid.Water;
import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Water against IAPWS R7-97 (industrial formulation 1997), tables 5, 35 and 36 as printed there (from memory, reproduced by
 * an independent open implementation), and against properties at one atmosphere. The tables of {@link Water} are made at
 * 0.5 MPa, which raises the density by 0.02 percent.
 */
@Tag("validation")
class IapwsWaterTest {
    private final IF97 library = new IF97(IF97.UnitSystem.SI);

    /** R7-97 table 5: K, Pa, m3/kg, J/kg, J/(kg K), J/(kg K), m/s. */
    @ParameterizedTest
    @CsvSource({
        "300, 3e6, 0.100215168e-2, 0.115331273e6, 0.392294792e3, 0.417301218e4, 0.150773921e4",
        "300, 80e6, 0.971180894e-3, 0.184142828e6, 0.368563852e3, 0.401008987e4, 0.163469054e4",
        "500, 3e6, 0.120241800e-2, 0.975542239e6, 0.258041912e4, 0.465580682e4, 0.124071337e4"
    })
    void libraryReproducesRegionOne(double t, double p, double v, double h, double s, double cp, double w)
            throws OutOfRangeException {
        assertThat(library.specificVolumePT(p, t) / v).isCloseTo(1, within(5.5e-9));
        assertThat(library.specificEnthalpyPT(p, t) / h).isCloseTo(1, within(5.5e-9));
        assertThat(library.specificEntropyPT(p, t) / s).isCloseTo(1, within(5.5e-9));
        assertThat(library.isobaricHeatCapacityPT(p, t) / cp).isCloseTo(1, within(5.5e-9));
        assertThat(library.speedOfSoundPT(p, t) / w).isCloseTo(1, within(5.5e-9));
    }

    /** R7-97 table 35. */
    @ParameterizedTest
    @CsvSource({"300, 0.353658941e4", "500, 0.263889776e7", "600, 0.123443146e8"})
    void libraryReproducesSaturationPressure(double t, double p) throws OutOfRangeException {
        assertThat(library.saturationPressureT(t) / p).isCloseTo(1, within(5.5e-9));
    }

    /** R7-97 table 36; the program's own boiling temperature is only defined up to 0.45 MPa. */
    @ParameterizedTest
    @CsvSource({"1e5, 0.372755919e3", "1e6, 0.453035632e3", "1e7, 0.584149488e3"})
    void libraryReproducesSaturationTemperature(double p, double t) throws OutOfRangeException {
        assertThat(library.saturationTemperatureP(p) / t).isCloseTo(1, within(5.5e-9));
        if (p <= 0.45e6) {
            assertThat(Water.boilingTemperature(p) / t).isCloseTo(1, within(5.5e-9));
        }
    }

    /** The library's thermal conductivity is of an older release than R15-11, and up to 0.6 percent above it when cold. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/iapws/liquid-water.csv", useHeadersInDisplayName = true)
    void liquidWater(
            double celsius,
            double psat,
            double density,
            double cp,
            double viscosity,
            double conductivity,
            double latent) {
        double t = celsius + 273.15;
        assertThat(Water.boilingTemperature(psat)).isCloseTo(t, within(5e-4));
        assertThat(Water.density(t) / density).isCloseTo(1, within(2.2e-4));
        assertThat(Water.specificHeat(t) / (cp * 1000)).isCloseTo(1, within(6e-4));
        assertThat(Water.viscosity(t) / (viscosity * 1e-6)).isCloseTo(1, within(5e-4));
        assertThat(Water.conductivity(t) / conductivity).isCloseTo(1, within(6.5e-3));
        assertThat(Water.latentHeat(t)).isCloseTo(latent * 1000, within(60.0));
    }
}
