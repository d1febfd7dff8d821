package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FirstOrderSharesTest {
    /** Weights 3, 2, 1 of independent inputs of one distribution: variances as 9 to 4 to 1; low by 63 in 4096 at most. */
    @Test
    void aWeightedSumHasTheSquaresOfItsWeights() {
        FirstOrderShares shares = weighted(4096, 1e6);
        assertThat(shares.share(0)).isCloseTo(9 / 14.0, within(0.016));
        assertThat(shares.share(1)).isCloseTo(4 / 14.0, within(0.016));
        assertThat(shares.share(2)).isCloseTo(1 / 14.0, within(0.016));
        assertThat(shares.share(3)).isLessThan(0.005);
    }

    @Test
    void aLargeOffsetCostsNoDigits() {
        assertThat(weighted(512, 1e6).share(0)).isCloseTo(weighted(512, 0).share(0), within(1e-6));
    }

    @Test
    void knowsWhenThereIsNothingToSay() {
        FirstOrderShares few = weighted(FirstOrderShares.LEAST_SAMPLES - 1, 0);
        assertThat(few.isKnown()).isFalse();
        assertThatThrownBy(() -> few.share(0)).isInstanceOf(IllegalStateException.class);
        FirstOrderShares constant = new FirstOrderShares(1);
        for (int i = 0; i < 200; i++) {
            constant.add(new double[] {i / 200.0}, 0.1);
        }
        assertThat(constant.isKnown()).isFalse();
    }

    @Test
    void anInputWithoutEffectStaysWithinTheNoise() {
        int above = 0;
        for (long seed = 1; seed <= 40; seed++) {
            SobolPoints points = new SobolPoints(12, seed);
            FirstOrderShares shares = new FirstOrderShares(12);
            for (int i = 0; i < 500; i++) {
                double[] u = points.point(i);
                shares.add(u, Math.exp(2 * u[0]) + u[1] * u[2]);
            }
            for (int j = 3; j < 12; j++) {
                above += shares.share(j) > shares.noise() ? 1 : 0;
            }
        }
        assertThat(above / (40.0 * 9)).isLessThan(0.01);
    }

    private static FirstOrderShares weighted(int samples, double offset) {
        SobolPoints points = new SobolPoints(4, 2);
        FirstOrderShares shares = new FirstOrderShares(4);
        for (int i = 0; i < samples; i++) {
            double[] u = points.point(i);
            shares.add(u, offset + 3 * u[0] + 2 * u[1] + u[2]);
        }
        return shares;
    }
}
