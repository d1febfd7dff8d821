package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import com.hummeling.if97.OutOfRangeException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The library behind the water table against check points of the IAPWS releases, from memory: R12-08 (viscosity), table 4; the
 * thermal conductivity for industrial use of 1985, revised 1998, as its users check it; R15-11, table 4, at 298.15 K.
 */
@Tag("validation")
class IapwsTransportTest {
    private final IF97 library = new IF97(IF97.UnitSystem.SI);

    /** K, kg/m3, Pa s; without the critical enhancement, which counts only near the critical point. */
    @ParameterizedTest
    @CsvSource({
        "298.15, 998, 889.735100e-6",
        "298.15, 1200, 1437.649467e-6",
        "373.15, 1000, 307.883622e-6",
        "433.15, 1, 14.538324e-6",
        "433.15, 1000, 217.685358e-6",
        "873.15, 1, 32.619287e-6"
    })
    void viscosity(double t, double density, double viscosity) throws OutOfRangeException {
        assertThat(library.dynamicViscosityRhoT(density, t) / viscosity).isCloseTo(1, within(1e-7));
    }

    /** Pa, K, W/(m K). */
    @ParameterizedTest
    @CsvSource({"1e5, 298.15, 0.607509806", "10e6, 873.15, 0.867570353e-1", "40e6, 673.15, 0.398506911"})
    void conductivityOfThe1998Release(double p, double t, double conductivity) throws OutOfRangeException {
        assertThat(library.thermalConductivityPT(p, t) / conductivity).isCloseTo(1, within(3e-6));
    }

    /** 298.15 K and 998 kg/m3: 607.712868 mW/(m K) by R15-11. */
    @ParameterizedTest
    @CsvSource("298.15, 998, 607.712868e-3")
    void conductivityAgainstTheNewRelease(double t, double density, double conductivity) throws OutOfRangeException {
        assertThat(library.thermalConductivityRhoT(density, t) / conductivity).isCloseTo(1, within(6.5e-3));
    }
}
