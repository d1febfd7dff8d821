package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.heattransfer.Gnielinski;
import boilwright.heattransfer.GnielinskiCoil;
import boilwright.heattransfer.ManlapazChurchill;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Coils against others' results. Laminar: C. E. Kalb and J. D. Seader, Int. J. Heat Mass Transfer 15 (1972) 801, numerical,
 * 0.836 De^0.5 Pr^0.1 for De from 80 and Pr 0.7 to 5; A. N. Dravid and others, AIChE J. 17 (1971) 1114, (0.65 De^0.5 + 0.76)
 * Pr^0.175 for De 50 to 2000 and Pr 5 to 175. Turbulent: E. F. Schmidt, Chem. Ing. Tech. 39 (1967) 781. Formulas from memory.
 * The scatter between these sources is the tolerance.
 */
@Tag("validation")
class CoilHeatTransferTest {
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1, 2, 5})
    void kalbAndSeader(double prandtl) {
        for (double dean = 200; dean <= 1200; dean *= 1.2) {
            double theirs = 0.836 * Math.sqrt(dean) * Math.pow(prandtl, 0.1);
            assertThat(ManlapazChurchill.nusselt(dean, prandtl) / theirs).isCloseTo(1, within(0.13));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 7, 12, 20})
    void dravid(double prandtl) {
        for (double dean = 100; dean <= 2000; dean *= 1.3) {
            double theirs = (0.65 * Math.sqrt(dean) + 0.76) * Math.pow(prandtl, 0.175);
            assertThat(ManlapazChurchill.nusselt(dean, prandtl) / theirs).isCloseTo(1, within(0.19));
        }
    }

    /** In thick liquids (cold glycol) it stays on the careful side of Dravid. */
    @ParameterizedTest
    @ValueSource(doubles = {50, 150})
    void dravidInThickLiquids(double prandtl) {
        for (double dean = 100; dean <= 2000; dean *= 1.3) {
            double theirs = (0.65 * Math.sqrt(dean) + 0.76) * Math.pow(prandtl, 0.175);
            assertThat(ManlapazChurchill.nusselt(dean, prandtl) / theirs).isBetween(0.6, 1.0);
        }
    }

    /** What eq. 39 of Manlapaz and Churchill tends to: 1.05 sqrt(De/(1 + 0.477/Pr)). */
    @ParameterizedTest
    @CsvSource({"1e5, 0.7", "1e5, 7"})
    void asymptote(double dean, double prandtl) {
        double asymptote = Math.cbrt(1.158) * Math.sqrt(dean / (1 + 0.477 / prandtl));
        assertThat(ManlapazChurchill.nusselt(dean, prandtl) / asymptote).isCloseTo(1, within(0.001));
    }

    /** Nusselt number of a coil over that of a straight tube in turbulent flow, 1 + 3.6 (1 - d/D)(d/D)^0.8 (Schmidt 1967). */
    @ParameterizedTest
    @ValueSource(doubles = {0.01, 0.02, 0.05, 0.1})
    void schmidtsTurbulentRatio(double curvature) {
        for (double prandtl : new double[] {0.7, 2, 5}) {
            for (double reynolds = 2.2e4; reynolds <= 1.5e5; reynolds *= 1.3) {
                double ratio =
                        GnielinskiCoil.nusselt(reynolds, prandtl, curvature) / Gnielinski.nusselt(reynolds, prandtl);
                assertThat(ratio / (1 + 3.6 * (1 - curvature) * Math.pow(curvature, 0.8)))
                        .isCloseTo(1, within(0.13));
            }
        }
    }
}
