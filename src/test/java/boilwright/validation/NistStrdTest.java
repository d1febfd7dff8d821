package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rise.LeastSquaresFit;
import boilwright.rise.RiseCurve;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Least squares against certified values of the NIST/ITL Statistical Reference Datasets (StRD): Norris of Linear Regression and
 * Misra1a of Nonlinear Least Squares Regression, both of the lower level of difficulty. Parameters, their standard deviations and
 * the residual sum of squares are certified to 11 figures or more for Misra1a and to 15 for Norris.
 */
@Tag("validation")
class NistStrdTest {
    /** y = b1 (1 - exp(-b2 x)), the curve of Misra1a. */
    private static final LeastSquaresFit.Curve MISRA = new LeastSquaresFit.Curve() {
        @Override
        public int parameterCount() {
            return 2;
        }

        @Override
        public double value(double x, double[] b) {
            return -b[0] * Math.expm1(-b[1] * x);
        }

        @Override
        public void gradient(double x, double[] b, double[] into) {
            into[0] = -Math.expm1(-b[1] * x);
            into[1] = b[0] * x * Math.exp(-b[1] * x);
        }
    };

    @Test
    void aStraightLineThroughNorris() throws IOException {
        LeastSquaresFit.Points points = points("norris");
        LeastSquaresFit fit =
                LeastSquaresFit.of(RiseCurve.LEAK, points, new double[] {0, 0}).orElseThrow();
        double variance = fit.residualSquares() / (points.count() - 2);
        assertThat(fit.parameters()[0]).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(fit.parameters()[1]).isCloseTo(1.00211681802045, within(1e-13));
        assertThat(fit.residualSquares()).isCloseTo(26.6173985294224, within(1e-11));
        assertThat(fit.deviation(0, variance).orElseThrow()).isCloseTo(0.232818234301152, within(1e-12));
        assertThat(fit.deviation(1, variance).orElseThrow()).isCloseTo(0.429796848199937e-3, within(1e-15));
    }

    /** Both starts that come with the data. */
    @ParameterizedTest
    @CsvSource({"500, 0.0001", "250, 0.0005"})
    void misra1aFromBothStarts(double first, double second) throws IOException {
        LeastSquaresFit.Points points = points("misra1a");
        LeastSquaresFit fit =
                LeastSquaresFit.of(MISRA, points, new double[] {first, second}).orElseThrow();
        double variance = fit.residualSquares() / (points.count() - 2);
        assertThat(fit.parameters()[0] / 2.3894212918e2).isCloseTo(1, within(1e-9));
        assertThat(fit.parameters()[1] / 5.5015643181e-4).isCloseTo(1, within(1e-9));
        assertThat(fit.residualSquares() / 1.2455138894e-1).isCloseTo(1, within(1e-10));
        assertThat(fit.deviation(0, variance).orElseThrow() / 2.7070075241).isCloseTo(1, within(1e-7));
        assertThat(fit.deviation(1, variance).orElseThrow() / 7.2668688436e-6).isCloseTo(1, within(1e-7));
    }

    /** Misra1a's curve is that of surface gas whose level is held at zero: b1 is slope times time constant. */
    @Test
    void theCurveOfSurfaceGasThroughMisra1a() throws IOException {
        LeastSquaresFit.Curve gas = RiseCurve.SURFACE_GAS.holding(0, 0);
        LeastSquaresFit fit = LeastSquaresFit.of(gas, points("misra1a"), new double[] {0.1, Math.log(1000)})
                .orElseThrow();
        double tau = Math.exp(fit.parameters()[1]);
        assertThat(1 / tau / 5.5015643181e-4).isCloseTo(1, within(1e-8));
        assertThat(fit.parameters()[0] * tau / 2.3894212918e2).isCloseTo(1, within(1e-8));
        assertThat(fit.residualSquares() / 1.2455138894e-1).isCloseTo(1, within(1e-10));
    }

    private static LeastSquaresFit.Points points(String name) throws IOException {
        try (InputStream in = NistStrdTest.class.getResourceAsStream("/reference/nist-strd/" + name + ".csv")) {
            List<double[]> rows = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
            double[] alike = new double[rows.size()];
            Arrays.fill(alike, 1);
            return new LeastSquaresFit.Points(
                    rows.stream().mapToDouble(row -> row[0]).toArray(),
                    rows.stream().mapToDouble(row -> row[1]).toArray(),
                    alike);
        }
    }
}
