package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TallyTest {
    /** Quantiles of the standard normal distribution: Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.5. */
    private static final double NORMAL_90 = 1.28155;

    private static final double NORMAL_75 = 0.67449;

    @ParameterizedTest
    @ValueSource(ints = {4096, 65_536, 200_000})
    void quantilesOfANormalQuantityAreTheTabulatedOnes(int samples) {
        NormalDistribution normal = new NormalDistribution(500, 20);
        SobolPoints points = new SobolPoints(1, 7);
        Tally tally = new Tally();
        for (int i = 0; i < samples; i++) {
            tally.add(normal.inverseCumulativeProbability(points.point(i)[0]));
        }
        double off = 500 / 4096.0 + 0.05;
        assertThat(tally.quantile(0.1).getAsDouble()).isCloseTo(500 - 20 * NORMAL_90, within(off));
        assertThat(tally.quantile(0.25).getAsDouble()).isCloseTo(500 - 20 * NORMAL_75, within(off));
        assertThat(tally.quantile(0.5).getAsDouble()).isCloseTo(500, within(off));
        assertThat(tally.quantile(0.9).getAsDouble()).isCloseTo(500 + 20 * NORMAL_90, within(off));
    }

    @Test
    void fewValuesGiveTheirOwnNumbersBack() {
        Tally tally = new Tally();
        for (int i = 10; i >= 1; i--) {
            tally.add(i);
        }
        assertThat(tally.quantile(0)).hasValue(1);
        assertThat(tally.quantile(0.1)).hasValue(1);
        assertThat(tally.quantile(0.11)).hasValue(2);
        assertThat(tally.quantile(0.5)).hasValue(5);
        assertThat(tally.quantile(0.9)).hasValue(9);
        assertThat(tally.quantile(1)).hasValue(10);
    }

    @Test
    void whatNeverComesRanksLast() {
        Tally tally = new Tally();
        tally.add(60);
        tally.add(70);
        tally.addNever(2);
        assertThat(tally.quantile(0.5)).hasValue(70);
        assertThat(tally.quantile(0.51)).isEmpty();
        assertThat(tally.finite()).isEqualTo(2);
        assertThat(tally.never()).isEqualTo(2);
        assertThat(new Tally().quantile(0.5)).isEmpty();
    }

    @Test
    void manyValuesOfAWideRangeStayWithinTheirClass() {
        Tally tally = new Tally();
        int n = 60_000;
        for (int i = 0; i < n; i++) {
            double u = (i * 7919L % n + 0.5) / n;
            tally.add((u < 0.5 ? -1 : 1) * Math.pow(10, 12 * Math.abs(u - 0.5)));
        }
        for (double share : new double[] {0.05, 0.3, 0.45, 0.55, 0.7, 0.95}) {
            double exact = (share < 0.5 ? -1 : 1) * Math.pow(10, 12 * Math.abs(share - 0.5));
            assertThat(tally.quantile(share).getAsDouble() / exact).isCloseTo(1, within(1.0 / 4096 + 1e-3));
        }
    }

    @Test
    void theOrderOfManyValuesDoesNotMatter() {
        Tally forward = new Tally();
        Tally backward = new Tally();
        for (int i = 0; i < 30_000; i++) {
            forward.add(Math.sin(i));
            backward.add(Math.sin(29_999 - i));
        }
        for (double share = 0.05; share < 1; share += 0.05) {
            assertThat(forward.quantile(share)).isEqualTo(backward.quantile(share));
        }
    }

    @Test
    void wholeNumbersStayWhole() {
        Tally tally = new Tally();
        for (int i = 0; i < 50_000; i++) {
            tally.add(i % 5);
        }
        assertThat(tally.quantile(0.1)).hasValue(0);
        assertThat(tally.quantile(0.5)).hasValue(2);
        assertThat(tally.quantile(0.9)).hasValue(4);
    }

    @Test
    void refusesWhatIsNoNumber() {
        assertThatThrownBy(() -> new Tally().add(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
