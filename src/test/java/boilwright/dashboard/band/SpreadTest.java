package boilwright.dashboard.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Labels side by side. */
class SpreadTest {
    @Test
    void whatHasRoomStandsWhereItWants() {
        double[] lefts = Spread.lefts(new double[] {50, 200}, new double[] {40, 60}, 5, 0, 400);
        assertThat(lefts).containsExactly(30, 170);
    }

    @Test
    void twoThatWantOnePlaceShareItEvenly() {
        double[] lefts = Spread.lefts(new double[] {100, 100}, new double[] {40, 40}, 10, 0, 400);
        assertThat(lefts[0]).isCloseTo(55, within(1e-9));
        assertThat(lefts[1]).isCloseTo(105, within(1e-9));
    }

    @Property(tries = 100, seed = "4101")
    void noneOverlapsAndNoneLeavesTheRoom(
            @ForAll @Size(min = 1, max = 12) double @DoubleRange(min = 0, max = 1000) [] wanted) {
        double[] centres = wanted.clone();
        Arrays.sort(centres);
        double[] widths = new double[centres.length];
        Arrays.fill(widths, 60);
        double[] lefts = Spread.lefts(centres, widths, 4, 0, 1000);
        for (int i = 0; i < lefts.length; i++) {
            assertThat(lefts[i]).isBetween(-1e-9, 940 + 1e-9);
            if (i > 0) {
                assertThat(lefts[i]).isGreaterThanOrEqualTo(lefts[i - 1] + 64 - 1e-9);
            }
        }
    }
}
