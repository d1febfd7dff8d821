package boilwright.dashboard.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.model.Timelines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** How the cursor runs. */
class PlaySpeedTest {
    private static final double FRAME_S = 1.0 / 60;

    private final RunTimeline line = Timelines.demo("mirror-club");
    private final BandAxis axis = BandAxis.of(line);

    @ParameterizedTest
    @EnumSource(PlaySpeed.class)
    void movesOnAtEveryFrameAndNeverBeyondTheEnd(PlaySpeed speed) {
        for (double share = 0; share < 1; share += 0.01) {
            double from = axis.scale().axisS(share);
            double to = speed.advance(axis, from, FRAME_S);
            assertThat(to).isGreaterThan(from).isLessThanOrEqualTo(line.endS());
        }
        assertThat(speed.advance(axis, line.endS() - 1e-6, 10)).isEqualTo(line.endS());
        assertThat(speed.words()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({"ALL_IN_20_S, 20", "ALL_IN_1_MIN, 60", "ALL_IN_3_MIN, 180"})
    void takesTheTimeItSays(PlaySpeed speed, double wholeS) {
        int frames = 0;
        for (double at = 0; at < line.endS(); at = speed.advance(axis, at, FRAME_S)) {
            frames++;
        }
        assertThat(frames * FRAME_S).isCloseTo(wholeS, within(2 * FRAME_S));
    }

    @Test
    void runsInStepWithThePumpsClockOutsideThePlateau() {
        assertThat(PlaySpeed.REAL_TIME.advance(axis, 100, 2)).isEqualTo(102);
        assertThat(PlaySpeed.TIMES_60.advance(axis, line.cooldownStartS(), 1)).isEqualTo(line.cooldownStartS() + 60);
        double plateauS = 0;
        for (double at = line.restStartS(); at < line.cooldownStartS(); plateauS += FRAME_S) {
            at = PlaySpeed.REAL_TIME.advance(axis, at, FRAME_S);
        }
        assertThat(plateauS).isCloseTo(5, within(0.1));
    }
}
