package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.gasflow.BackingCurve;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A backing pump's curve: the ultimate pressure of a constant speed, p = Q/S + pu (J. F. O'Hanlon, from memory). */
@Tag("validation")
class PumpDownTest {
    @Test
    void constantSpeedAddsTheLoadOverTheSpeedToTheUltimate() {
        BackingCurve curve = new BackingCurve(new double[] {100}, new double[] {2e-3}, 0.5);
        for (double q = 1e-8; q < 10; q *= 3) {
            assertThat(curve.pressureFor(q)).isCloseTo(0.5 + q / 2e-3, within(1e-9 * (0.5 + q / 2e-3)));
        }
        assertThat(curve.pressureFor(0)).isEqualTo(0.5);
        assertThat(curve.throughput(0.5)).isZero();
    }

    @Test
    void betweenPointsTheLogarithmIsStraight() {
        BackingCurve curve = new BackingCurve(new double[] {1, 100}, new double[] {1e-3, 4e-3}, 0);
        assertThat(curve.throughput(10) / 10).isCloseTo(2e-3, within(1e-12));
        assertThat(curve.throughput(0.1) / 0.1).isCloseTo(1e-3, within(1e-12));
        assertThat(curve.throughput(1e5) / 1e5).isCloseTo(4e-3, within(1e-12));
    }
}
