package boilwright.fluid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DewPointTest {
    @Test
    void dewPointIsTheAirsTemperatureWhenSaturatedAndFallsWithDryness() {
        assertThat(DewPoint.temperature(300, 1)).isCloseTo(300, within(1e-9));
        double t = DewPoint.temperature(298.15, 0.5);
        assertThat(DewPoint.saturationPressure(t)).isCloseTo(0.5 * DewPoint.saturationPressure(298.15), within(1e-6));
        assertThat(DewPoint.temperature(298.15, 0.4)).isLessThan(t);
    }
}
