package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.numerics.FirstOrderShares;
import boilwright.numerics.SobolPoints;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The function of Ishigami and Homma, Proc. First International Symposium on Uncertainty Modeling and Analysis, IEEE (1990) 398: sin x1 + a
 * sin^2 x2 + b x3^4 sin x1 with a = 7, b = 0.1 and each x uniform from -pi to pi. Its first-order indices follow by integration:
 * V = a^2/8 + b pi^4/5 + b^2 pi^8/18 + 1/2, V1 = (1 + b pi^4/5)^2/2, V2 = a^2/8, V3 = 0; that is S1 = 0.3139, S2 = 0.4424, S3 = 0. x3 acts
 * only together with x1, which no first-order index shows.
 */
@Tag("validation")
class IshigamiTest {
    private static final double A = 7;
    private static final double B = 0.1;

    @Test
    void theIndicesAreThoseOfTheIntegrals() {
        double pi4 = Math.pow(Math.PI, 4);
        double variance = A * A / 8 + B * pi4 / 5 + B * B * pi4 * pi4 / 18 + 0.5;
        assertThat(Math.pow(1 + B * pi4 / 5, 2) / 2 / variance).isCloseTo(0.3139, within(5e-5));
        assertThat(A * A / 8 / variance).isCloseTo(0.4424, within(5e-5));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 20_261})
    void manySamplesGiveTheIndices(long seed) {
        FirstOrderShares shares = shares(16_384, seed);
        assertThat(shares.share(0)).isCloseTo(0.3139, within(0.005));
        assertThat(shares.share(1)).isCloseTo(0.4424, within(0.005));
        assertThat(shares.share(2)).isLessThan(0.005);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 7, 20_261})
    void twoThousandSamplesAreNearThem(long seed) {
        FirstOrderShares shares = shares(2000, seed);
        assertThat(shares.share(0)).isCloseTo(0.3139, within(0.03));
        assertThat(shares.share(1)).isCloseTo(0.4424, within(0.03));
        assertThat(shares.share(2)).isLessThan(0.03);
    }

    @ParameterizedTest
    @ValueSource(ints = {200, 500})
    void fewSamplesStillPutThemInOrder(int samples) {
        FirstOrderShares shares = shares(samples, 7);
        assertThat(shares.share(1)).isGreaterThan(shares.share(2) + 0.15);
        assertThat(shares.share(0)).isGreaterThan(shares.share(2) + 0.15);
    }

    private static FirstOrderShares shares(int samples, long seed) {
        SobolPoints points = new SobolPoints(3, seed);
        FirstOrderShares shares = new FirstOrderShares(3);
        for (int i = 0; i < samples; i++) {
            double[] u = points.point(i);
            double x1 = Math.PI * (2 * u[0] - 1);
            double x2 = Math.PI * (2 * u[1] - 1);
            double x3 = Math.PI * (2 * u[2] - 1);
            shares.add(u, Math.sin(x1) + A * Math.pow(Math.sin(x2), 2) + B * Math.pow(x3, 4) * Math.sin(x1));
        }
        return shares;
    }
}
