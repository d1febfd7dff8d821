package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.heattransfer.ChurchillFriction;
import boilwright.heattransfer.Gnielinski;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Friction in round tubes: C. F. Colebrook, J. Inst. Civ. Eng. 11 (1939) 133, 1/sqrt(f) = -2 log10(e/(3.7 d) + 2.51/(Re
 * sqrt(f))), and 64/Re of laminar flow. Where Churchill's formula is within 1 percent is stated by the tests.
 */
@Tag("validation")
class ColebrookTest {
    private static double colebrook(double reynolds, double roughness) {
        double root = 7;
        for (int i = 0; i < 100; i++) {
            root = -2 * Math.log10(roughness / 3.7 + 2.51 * root / reynolds);
        }
        return 1 / (root * root);
    }

    private static double churchill(double reynolds, double roughness) {
        return ChurchillFriction.timesReynolds(reynolds, roughness) / reynolds;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-6, 1e-5, 1e-4, 3e-4, 1e-3})
    void withinOnePercentFromTenThousandToTenMillionWhenNotVeryRough(double roughness) {
        for (double reynolds = 1e4; reynolds <= 1e7; reynolds *= 1.1) {
            assertThat(churchill(reynolds, roughness) / colebrook(reynolds, roughness))
                    .isCloseTo(1, within(0.01));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {3e-3, 1e-2, 2e-2, 5e-2})
    void withinOnePercentFromAHundredThousandWhenRough(double roughness) {
        for (double reynolds = 1e5; reynolds <= 1e8; reynolds *= 1.1) {
            assertThat(churchill(reynolds, roughness) / colebrook(reynolds, roughness))
                    .isCloseTo(1, within(0.01));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-4, 1e-3, 1e-2, 2e-2})
    void withinThreeAndAHalfPercentFromFourThousand(double roughness) {
        for (double reynolds = 4000; reynolds <= 1e5; reynolds *= 1.05) {
            assertThat(churchill(reynolds, roughness) / colebrook(reynolds, roughness))
                    .isCloseTo(1, within(0.035));
        }
    }

    @Test
    void laminarFlowIsSixtyFourOverReynolds() {
        for (double reynolds = 1e-3; reynolds <= 2000; reynolds *= 1.3) {
            assertThat(churchill(reynolds, 1e-3) * reynolds / 64).isCloseTo(1, within(0.002));
        }
        assertThat(churchill(2000, 0) * 2000 / 64).isCloseTo(1, within(0.002));
    }

    /** The value that an independent open implementation of Churchill's formula documents. */
    @ParameterizedTest
    @CsvSource("1e5, 1e-4, 0.018462624566280075")
    void documentedValue(double reynolds, double roughness, double factor) {
        assertThat(churchill(reynolds, roughness) / factor).isCloseTo(1, within(1e-12));
    }

    /** Petukhov's smooth friction, which Gnielinski's relation uses. */
    @Test
    void petukhovIsSmoothColebrook() {
        for (double reynolds = 1e4; reynolds <= 5e6; reynolds *= 1.2) {
            assertThat(Gnielinski.friction(reynolds) / colebrook(reynolds, 0)).isCloseTo(1, within(0.02));
        }
    }
}
