package boilwright.dashboard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.rig.file.RigReader;
import boilwright.thermal.TimeEvent;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One axis of time for warm-up, rest and cool-down. */
class RunTimelineTest {
    static List<String> demos() {
        return RigReader.demoNames();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void phasesFollowEachOtherWithoutGapsAndMarksRise(String demo) {
        RunTimeline line = Timelines.demo(demo);
        assertThat(line.restStartS()).isPositive();
        assertThat(line.cooldownStartS()).isGreaterThan(line.restStartS());
        assertThat(line.endS()).isGreaterThan(line.cooldownStartS());
        assertThat(line.phases()).isNotEmpty();
        assertThat(line.marks()).isSortedAccordingTo((a, b) -> Double.compare(time(a), time(b)));
        assertThat(line.marks()).allSatisfy(m -> assertThat(time(m)).isBetween(0.0, line.endS()));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void theMomentIsTheRunsOwnAtItsEnds(String demo) {
        RunTimeline line = Timelines.demo(demo);
        MomentState cold = line.at(0);
        MomentState rest = line.at((line.restStartS() + line.cooldownStartS()) / 2);
        MomentState end = line.at(line.endS());
        assertThat(cold.oilK()).isBetween(283.0, 303.0);
        assertThat(rest.oilK()).isGreaterThan(cold.oilK() + 100);
        assertThat(end.oilK()).isLessThan(rest.oilK());
        assertThat(cold.jets()).noneMatch(JetState::lit);
    }

    @Test
    void everyJetOfARigThatWorksIsLitAtRestAndDarkAtTheEnd() {
        RunTimeline line = Timelines.demo("mirror-club");
        assertThat(line.at((line.restStartS() + line.cooldownStartS()) / 2).jets())
                .allMatch(JetState::lit);
        assertThat(line.at(line.endS()).jets()).noneMatch(JetState::lit);
    }

    @Test
    void theMomentMovesSmoothlyBetweenRecords() {
        RunTimeline line = Timelines.demo("mirror-club");
        double mid = line.restStartS() / 3;
        assertThat(line.at(mid + 1e-3).oilK()).isCloseTo(line.at(mid).oilK(), within(0.01));
    }

    private static double time(TimeEvent mark) {
        return mark.timeS().orElseThrow();
    }
}
