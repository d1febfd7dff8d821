package boilwright.numerics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

class SobolPointsTest {
    @Test
    void aPointDependsOnItsIndexAlone() {
        SobolPoints forward = new SobolPoints(30, 7);
        SobolPoints other = new SobolPoints(30, 7);
        double[][] points = new double[100][];
        for (int i = 0; i < 100; i++) {
            points[i] = forward.point(i);
        }
        for (int i = 99; i >= 0; i--) {
            assertThat(other.point(i)).containsExactly(points[i]);
        }
        assertThat(new SobolPoints(30, 8).point(3)).isNotEqualTo(points[3]);
    }

    @Test
    void anotherShiftTurnsTheSameDigitsOfAllPoints() {
        SobolSequenceGenerator plain = new SobolSequenceGenerator(5);
        SobolPoints shifted = new SobolPoints(5, 11);
        double[] first = shifted.point(0);
        for (int i = 0; i < 50; i++) {
            double[] a = plain.skipTo(i);
            double[] b = shifted.point(i);
            for (int j = 0; j < 5; j++) {
                long turned = (long) (b[j] * 0x1p52) ^ (long) (first[j] * 0x1p52);
                assertThat(turned * 0x1p-52).isEqualTo(a[j]);
            }
        }
    }

    @Test
    void aPowerOfTwoFillsEveryStripOfEveryCoordinateOnce() {
        int n = 256;
        SobolPoints points = new SobolPoints(40, 3);
        boolean[][] seen = new boolean[40][n];
        for (int i = 0; i < n; i++) {
            double[] u = points.point(i);
            for (int j = 0; j < 40; j++) {
                assertThat(u[j]).isGreaterThanOrEqualTo(0).isLessThan(1);
                int strip = (int) (u[j] * n);
                assertThat(seen[j][strip]).isFalse();
                seen[j][strip] = true;
            }
        }
    }

    @Test
    void theMeanOfASmoothProductIsNearlyExact() {
        SobolPoints points = new SobolPoints(6, 5);
        double sum = 0;
        int n = 4096;
        for (int i = 0; i < n; i++) {
            double product = 1;
            for (double u : points.point(i)) {
                product *= 1 + 0.5 * (u - 0.5);
            }
            sum += product;
        }
        assertThat(sum / n).isCloseTo(1, within(1e-3));
    }
}
