package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.heattransfer.AnnulusFriction;
import boilwright.heattransfer.AnnulusWall;
import boilwright.heattransfer.LaminarAnnulus;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Water jackets as annular gaps against the table of W. M. Kays and H. C. Perkins and the exact laminar friction (sources in
 * the data file). Stephan's fit, which the program uses, is up to 3.6 percent off the table.
 */
@Tag("validation")
class KaysAnnulusTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/annulus/laminar.csv", useHeadersInDisplayName = true)
    void laminarGap(double ratio, Double inner, Double outer, Double frictionReynolds) {
        if (inner != null && outer != null) {
            assertThat(LaminarAnnulus.developed(AnnulusWall.INNER, ratio) / inner)
                    .isCloseTo(1, within(0.036));
            assertThat(LaminarAnnulus.developed(AnnulusWall.OUTER, ratio) / outer)
                    .isCloseTo(1, within(0.036));
        }
        if (frictionReynolds != null) {
            assertThat(AnnulusFriction.timesReynolds(500, ratio, 0)).isCloseTo(frictionReynolds, within(0.006));
        }
    }
}
