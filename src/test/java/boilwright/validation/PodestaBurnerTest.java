package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.thermal.FlameBench;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A hotter vessel takes less heat from the same flame.
 *
 * <p>Source: M. de Podesta, web log, 16 December 2012: 0.2-0.8 kg of water on a burner of nominally 1750 W; about 850 W enter
 * cold water, "barely more than half" of that at 80 K above it. That slope of about -5 W/K holds evaporation and must not be
 * carried to an oil boiler, but a slope of zero is wrong: held is that net heat falls all the way, and by less than measured
 * on open water.
 */
@Tag("validation")
class PodestaBurnerTest {
    private static final double BASE_M2 = Math.PI / 4 * 0.19 * 0.19;

    @Test
    void netHeatFallsWithTheVesselsTemperature() {
        FlameBench burner = FlameBench.under(1750, BASE_M2);
        double before = burner.netW(283.15);
        for (double celsius = 20; celsius <= 300; celsius += 10) {
            double now = burner.netW(celsius + 273.15);
            assertThat(now).as("at %s C", celsius).isLessThan(before);
            before = now;
        }
    }

    @Test
    void itsSlopeIsNeitherZeroNorThatOfOpenWater() {
        FlameBench burner = FlameBench.under(1750, BASE_M2);
        double slope = (burner.netW(373.15) - burner.netW(293.15)) / 80;
        assertThat(slope).isBetween(-5.0, -0.2);
        double hot = (burner.netW(503.15) - burner.netW(373.15)) / 130;
        assertThat(hot).isBetween(-5.0, -0.2);
    }
}
