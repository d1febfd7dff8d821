package boilwright.heattransfer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Gnielinski: a value that an independent open implementation documents, and the two short forms that
 * Gnielinski gives himself in Int. Chem. Eng. 16 (1976) 359 (from memory).
 */
class GnielinskiTest {
    @ParameterizedTest
    @CsvSource("1e5, 1.2, 0.0185, 254.62682749359632")
    void gnielinskiWithAGivenFriction(double reynolds, double prandtl, double friction, double nusselt) {
        assertThat(Gnielinski.nusselt(reynolds, prandtl, friction) / nusselt).isCloseTo(1, within(1e-12));
    }

    /** 0.0214 (Re^0.8 - 100) Pr^0.4 for gases. */
    @ParameterizedTest
    @CsvSource({"1e4, 0.7", "1e5, 0.7", "1e6, 0.7", "1e5, 1.2"})
    void shortFormForGases(double reynolds, double prandtl) {
        double shortForm = 0.0214 * (Math.pow(reynolds, 0.8) - 100) * Math.pow(prandtl, 0.4);
        assertThat(Gnielinski.nusselt(reynolds, prandtl) / shortForm).isCloseTo(1, within(0.09));
    }

    /** 0.012 (Re^0.87 - 280) Pr^0.4 for liquids. */
    @ParameterizedTest
    @CsvSource({"1e4, 3", "1e4, 7", "1e4, 20", "1e5, 3", "1e5, 7", "1e5, 20", "1e6, 7", "1e6, 20", "1e4, 100"})
    void shortFormForLiquids(double reynolds, double prandtl) {
        double shortForm = 0.012 * (Math.pow(reynolds, 0.87) - 280) * Math.pow(prandtl, 0.4);
        assertThat(Gnielinski.nusselt(reynolds, prandtl) / shortForm).isCloseTo(1, within(0.12));
    }
}
