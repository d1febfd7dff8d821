package boilwright.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Carbon monoxide in a mixed room.
 *
 * <p>Source: emissions of 5 to 140 mL/min from camping burners under pots, FFI report 2010/01888; the room by its balance:
 * 140 mL/min into 30 m3 at half an air change an hour end at 0.0084 m3/h / (0.5/h 30 m3) = 560 ppm (derived).
 */
@Tag("validation")
class CarbonMonoxideTest {
    @Test
    void theWorstBurnerInAClosedRoom() {
        CarbonMonoxide room = CarbonMonoxide.of(30, 0.5, 7200);
        assertThat(room.highSteadyPpm()).isCloseTo(560, within(1e-9));
        assertThat(room.lowSteadyPpm()).isCloseTo(20, within(1e-9));
        // after two hours 1 - 1/e of it
        assertThat(room.highPpm()).isCloseTo(560 * (1 - Math.exp(-1)), within(1e-9));
    }

    @Test
    void theAirChangesItNamesKeepTheGuideline() {
        double changes = CarbonMonoxide.of(30, 0.5, 7200).airChangesForOneHour();
        assertThat(CarbonMonoxide.of(30, changes, 1e6).highPpm()).isCloseTo(CarbonMonoxide.ONE_HOUR_PPM, within(1e-6));
        // 35 mg/m3 of a gas of 28.01 g/mol in 24.47 L/mol
        assertThat(CarbonMonoxide.ONE_HOUR_PPM).isCloseTo(35 * 24.47 / 28.01, within(0.1));
    }

    @Test
    void aShortTimeFillsTheRoomInProportion() {
        CarbonMonoxide room = CarbonMonoxide.of(30, 0.5, 60);
        assertThat(room.highPpm()).isCloseTo(140e-6 / 30 * 1e6, within(0.03));
    }
}
