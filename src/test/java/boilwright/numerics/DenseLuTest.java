package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;

class DenseLuTest {
    @Test
    void agreesWithTheLibrary() {
        Random random = new Random(7);
        for (int n = 1; n <= 40; n += 3) {
            double[][] matrix = new double[n][n];
            double[] b = new double[n];
            for (int i = 0; i < n; i++) {
                b[i] = random.nextGaussian();
                for (int j = 0; j < n; j++) {
                    matrix[i][j] = random.nextInt(3) == 0 ? 0 : random.nextGaussian();
                }
                matrix[i][(i + 1) % n] += 2;
            }
            double[] expected = new LUDecomposition(new Array2DRowRealMatrix(matrix, true))
                    .getSolver()
                    .solve(new ArrayRealVector(b))
                    .toArray();
            DenseLu lu = new DenseLu(n);
            assertThat(lu.factor(matrix)).isTrue();
            lu.solve(b);
            for (int i = 0; i < n; i++) {
                assertThat(b[i]).isCloseTo(expected[i], within(1e-9 * (1 + Math.abs(expected[i]))));
            }
        }
    }

    @Test
    void exchangesRowsWhereTheDiagonalIsZero() {
        DenseLu lu = new DenseLu(3);
        assertThat(lu.factor(new double[][] {{0, 1, 0}, {0, 0, 2}, {4, 0, 0}})).isTrue();
        double[] b = {1, 2, 4};
        lu.solve(b);
        assertThat(b).containsExactly(1, 1, 1);
    }

    @Test
    void saysSoWhenThereIsNoSolution() {
        assertThat(new DenseLu(2).factor(new double[][] {{1, 2}, {2, 4}})).isFalse();
        assertThat(new DenseLu(2).factor(new double[][] {{Double.NaN, 2}, {2, 4}}))
                .isFalse();
    }
}
