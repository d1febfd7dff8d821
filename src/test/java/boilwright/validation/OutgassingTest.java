package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.OutgassingLaw;
import boilwright.outgassing.MaterialLibrary;
import boilwright.outgassing.MaterialRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gas given off and let through. Rates after one hour: R. J. Elsey, Vacuum 25 (1975) 299, table of values as reprinted; after ten
 * hours from memory. The barrer: 3.346e-16 mol m/(s m2 Pa) by its definition.
 */
@Tag("validation")
class OutgassingTest {
    private static final double TORR_LITRE = 101_325.0 / 760 * 10;

    @ParameterizedTest
    @CsvSource({
        "stainless-steel, 1.35e-8, 1.5e-9, 2e-9",
        "aluminium, 6.3e-9, 5e-10, 7e-10",
        "borosilicate, 7e-9, 5e-10, 7e-10",
        "fkm, 1.14e-6, 2e-7, 5e-7",
        "ptfe, 1.4e-7, 0.25e-7, 1.5e-7",
        "pvc, 8.5e-7, 2e-8, 1e-7"
    })
    void afterOneAndTenHours(String id, double oneHour, double lowTen, double highTen) {
        MaterialRecord material = MaterialLibrary.builtIn().find(id);
        double q1 = material.afterOneHour().value();
        double a = material.exponent().value();
        assertThat(OutgassingLaw.rate(q1, a, 3600) / TORR_LITRE).isCloseTo(oneHour, within(oneHour * 1e-3));
        assertThat(OutgassingLaw.rate(q1, a, 36_000) / TORR_LITRE).isBetween(lowTen, highTen);
    }

    /** Four hours after the start silicone rubber is at 4e-6 Torr L/(s cm2) (from memory). */
    @Test
    void siliconeAfterFourHours() {
        MaterialRecord material = MaterialLibrary.builtIn().find("silicone-rubber");
        double rate = OutgassingLaw.rate(
                        material.afterOneHour().value(), material.exponent().value(), 4 * 3600)
                / TORR_LITRE;
        assertThat(rate).isCloseTo(4e-6, within(1e-6));
    }
}
