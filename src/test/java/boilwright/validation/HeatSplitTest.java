package boilwright.validation;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Rig;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TestRigs;
import boilwright.thermal.ThermalProbe;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Where the heat of a metal pump goes.
 *
 * <p>Source: M. Vitale, Industrial Heating, September 2013, reprinted in Chemical Technology, April 2015, p. 16: about 80 %
 * of the heater's power into the housing's water, about 10 % lost from outer surfaces, mostly the boiler's; the rest through
 * baffles, upward radiation and the foreline. Large insulated industrial pumps; held as 70-97 % and 3-25 %.
 */
@Tag("validation")
class HeatSplitTest {
    static Stream<Rig> metalPumps() {
        return Stream.of(DemoRig.named("mirror-club"), TestRigs.metal150(1500), TestRigs.metal150(2200));
    }

    @ParameterizedTest
    @MethodSource("metalPumps")
    void mostOfItGoesIntoTheWater(Rig rig) {
        SteadyState steady = ThermalProbe.steady(rig);
        assertThat(steady.heatToWaterW() / steady.sourceInputW()).isBetween(0.70, 0.97);
        assertThat((steady.heatToAirW() + steady.sourceLossW()) / steady.sourceInputW())
                .isBetween(0.03, 0.25);
    }
}
