package boilwright.dashboard.band;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.dashboard.model.RunTimeline;
import boilwright.dashboard.model.Timelines;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The band without its controls. */
class BandModelTest {
    private final RunTimeline line = Timelines.demo("mirror-club");
    private BandModel model;

    @BeforeEach
    void begin() {
        model = new BandModel();
        model.setTimeline(line);
    }

    @Test
    void waitsForItsFirstRunInWords() {
        BandModel waiting = new BandModel();
        waiting.play();
        waiting.nextMark();
        waiting.toEnd();
        assertThat(waiting.playingProperty().get()).isFalse();
        assertThat(waiting.clock()).isEmpty();
        assertThat(waiting.words()).isNotBlank();
    }

    @Test
    void marksAreVisitedInOrderForwardAndBack() {
        model.toStart();
        double last = -1;
        int visited = 0;
        while (model.cursorSProperty().get() < line.endS() && visited < 100) {
            model.nextMark();
            assertThat(model.cursorSProperty().get()).isGreaterThan(last);
            last = model.cursorSProperty().get();
            visited++;
        }
        assertThat(visited).isGreaterThan(5);
        model.previousMark();
        assertThat(model.cursorSProperty().get()).isLessThan(line.endS());
    }

    @Test
    void stepsLandOnRoundTimesAndNeverLeaveTheAxis() {
        model.toStart();
        model.stepBack();
        assertThat(model.cursorSProperty().get()).isZero();
        model.stepForward();
        double step = model.cursorSProperty().get();
        assertThat(step).isPositive();
        model.stepForward();
        model.stepBack();
        assertThat(model.cursorSProperty().get()).isCloseTo(step, within(1e-6));
        model.toEnd();
        model.stepForward();
        assertThat(model.cursorSProperty().get()).isEqualTo(line.endS());
    }

    @Test
    void theClockOfTheCoolDownStartsAtHeatOff() {
        model.seek(line.cooldownStartS() + 75);
        assertThat(model.clock()).isEqualTo("0:01:15");
        String cooling = model.clockName();
        model.seek(75);
        assertThat(model.clock()).isEqualTo("0:01:15");
        assertThat(model.clockName()).isNotEqualTo(cooling);
    }

    @Test
    void playsToTheEndAndStopsThere() {
        model.seek(line.endS() - 60);
        model.play();
        assertThat(model.playingProperty().get()).isTrue();
        for (int i = 0; i < 10_000 && model.playingProperty().get(); i++) {
            model.tick(1);
        }
        assertThat(model.playingProperty().get()).isFalse();
        assertThat(model.cursorSProperty().get()).isEqualTo(line.endS());
        model.play();
        assertThat(model.cursorSProperty().get()).isZero();
        model.seekShare(0.5);
        assertThat(model.playingProperty().get()).as("a hand stops it").isFalse();
    }

    @Test
    void placeAndTimeBelongTogether() {
        for (double share : new double[] {0, 0.1, 0.35, 0.6, 0.85, 1}) {
            model.seekShare(share);
            assertThat(model.cursorShare()).isCloseTo(share, within(1e-9));
        }
    }

    @Test
    void everyMarkSaysWhatItIs() {
        assertThat(model.axis().marks()).isNotEmpty().allSatisfy(mark -> {
            assertThat(mark.title()).isNotBlank();
            assertThat(mark.words()).isNotBlank();
        });
        model.seek(model.axis().marks().get(0).axisS());
        assertThat(model.words()).contains(model.axis().marks().get(0).title());
    }

    @Test
    void aShorterRunKeepsTheCursorOnItsAxis() {
        model.toEnd();
        RunTimeline other = Timelines.demo("teaching-lab");
        model.setTimeline(other);
        assertThat(model.cursorSProperty().get()).isLessThanOrEqualTo(other.endS());
    }

    @Test
    void marksStandInOrderWithShortLabels() {
        assertThat(model.axis().marks()).extracting(BandMark::axisS).isSorted();
        assertThat(model.axis().marks())
                .extracting(BandMark::label)
                .allSatisfy(label -> assertThat(label).hasSizeBetween(1, 12));
        assertThat(model.axis().marks())
                .filteredOn(mark -> mark.sign().isOfJet())
                .isNotEmpty()
                .allSatisfy(mark -> {
                    assertThat(mark.label()).matches("[1-3]");
                    assertThat(mark.title()).contains("jet " + mark.label());
                });
    }

    @Test
    void theNearestMarkIsTheOneTold() {
        BandAxis axis = model.axis();
        for (BandMark mark : axis.marks()) {
            assertThat(axis.marksAt(mark.axisS(), 1e-9)).contains(mark);
            double beside = axis.scale().axisS(Math.min(1, axis.scale().share(mark.axisS()) + 1e-6));
            assertThat(axis.marksAt(beside, 1e-5)).contains(mark);
        }
        BandMark first = axis.marks().get(0);
        assertThat(axis.marksAt(first.axisS() / 2, 0.001)).isEmpty();
        assertThat(axis.markAfter(first.axisS() / 2)).isEqualTo(first.axisS());
        assertThat(axis.markBefore(first.axisS() + 1)).isEqualTo(first.axisS());
        assertThat(axis.markBefore(first.axisS())).isZero();
        assertThat(axis.markAfter(line.endS())).isEqualTo(line.endS());
    }

    @Test
    void whatHappensAtOneInstantIsToldTogether() {
        BandMark full = model.axis().marks().stream()
                .filter(mark -> mark.label().equals("all full"))
                .findFirst()
                .orElseThrow();
        model.seek(full.axisS());
        assertThat(model.words()).contains("all jets at full flow").contains("crossover allowed");
    }

    @Test
    void whatIsPointedAtIsToldBeforeWhatTheCursorIsAt() {
        BandMark last = model.axis().marks().get(model.axis().marks().size() - 1);
        model.seek(60);
        String atCursor = model.words();
        model.pointedProperty().set(List.of(last));
        assertThat(model.words()).isEqualTo(last.words()).isNotEqualTo(atCursor);
        model.pointedProperty().set(List.of());
        assertThat(model.words()).isEqualTo(atCursor);
    }

    @Test
    void theClockCountsHoursAndStandsStillAtRest() {
        model.seek(line.restStartS() + 1);
        String atRest = model.clock();
        assertThat(atRest).matches("[0-9]+:[0-5][0-9]:[0-5][0-9]");
        model.seek(line.cooldownStartS() - 1);
        assertThat(model.clock()).isEqualTo(atRest);
        model.seek(line.cooldownStartS() + 3725);
        assertThat(model.clock()).isEqualTo("1:02:05");
    }

    @Test
    void aCursorFromElsewhereStaysOnTheAxis() {
        model.cursorSProperty().set(-10);
        assertThat(model.cursorSProperty().get()).isZero();
        model.cursorSProperty().set(Double.NaN);
        assertThat(model.cursorSProperty().get()).isZero();
        model.cursorSProperty().set(1e9);
        assertThat(model.cursorSProperty().get()).isEqualTo(line.endS());
    }
}
