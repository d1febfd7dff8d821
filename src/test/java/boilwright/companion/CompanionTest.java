package boilwright.companion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Rule;
import boilwright.sequence.Variant;
import boilwright.thermal.EventKind;
import boilwright.thermal.SeriesQuantity;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A whole run of the mirror club's rig with a clock that the test moves. */
class CompanionTest {
    private final Bench bench = new Bench();
    private final Companion run = bench.run;

    private List<LogKind> kinds() {
        return bench.log.stream().map(LogEntry::kind).toList();
    }

    @Test
    void theFirstTickStartsTheClockAndTheNextDoesTheStep() {
        assertThat(run.look().clock()).isEmpty();
        assertThat(run.look().why()).contains("once the clock is started");
        assertThat(run.tickNext(false).words()).contains("counts from the backing pump");
        assertThat(run.look().current().orElseThrow().number()).isEqualTo(1);
        bench.pass(30);
        assertThat(run.tickNext(false).words()).isEqualTo("Step 1 is done, 30.0 s later than computed.");
        assertThat(run.look().current().orElseThrow().number()).isEqualTo(2);
        assertThat(run.look().steps().get(0).lateS().orElseThrow()).isEqualTo(30);
        assertThat(kinds()).containsExactly(LogKind.CLOCK, LogKind.TICK);
        assertThat(bench.log.get(1).step()).isEqualTo(1);
        assertThat(run.start(Clock.FROM_COLD).isDone()).isFalse();
    }

    @Test
    void aStepBeforeItsHoldWasSeenIsWarnedOfWithTheRuleItServes() {
        run.start(Clock.FROM_COLD);
        int heat = bench.number(Action.HEAT);
        Outcome warned = run.tick(heat, false);
        assertThat(warned.kind()).isEqualTo(Outcome.Kind.WARNED);
        assertThat(warned.words())
                .contains(Rule.BACKING_BEFORE_HEAT.sentence())
                .contains(Rule.WATER_WITH_HEAT.sentence())
                .contains(Rule.OUTLET_OPEN.sentence())
                .contains("Water comes out of the far end")
                .contains("once more");
        assertThat(run.look().steps().get(heat - 1).done()).isFalse();
        assertThat(kinds()).containsExactly(LogKind.CLOCK);
        assertThat(run.tick(heat, true).isDone()).isTrue();
        assertThat(bench.log.get(1).text()).contains(Rule.WATER_WITH_HEAT.sentence());
        assertThat(run.look().current().orElseThrow().number()).isEqualTo(1);
        assertThat(run.tick(heat, true).isDone()).isFalse();
    }

    @Test
    void aReadingStandsAgainstAStepThatItForbids() {
        run.start(Clock.FROM_COLD);
        for (int i = 1; i < bench.number(Action.HEAT); i++) {
            run.tick(i, true);
        }
        assertThat(run.read(ReadingKind.FORELINE, "200 Pa", false).isDone()).isTrue();
        assertThat(run.tickNext(false).words())
                .contains("Foreline was last read as 200 Pa")
                .contains(Rule.FORELINE_WITH_HEAT.sentence());
        run.read(ReadingKind.FORELINE, "20 Pa", false);
        assertThat(run.tickNext(false).isDone()).isTrue();
    }

    @Test
    void readingsAreToldWithWhatIsComputedForThisMoment() {
        bench.heated();
        bench.pass(300);
        double[] time =
                Bench.PLAN.check().warmup().series().column(SeriesQuantity.TIME).values();
        double[] oil = Bench.PLAN
                .check()
                .warmup()
                .series()
                .column(SeriesQuantity.LIQUID_TEMPERATURE)
                .values();
        double heatOn = Bench.PLAN.check().warmup().events().stream()
                .filter(e -> e.kind() == EventKind.HEAT_ON)
                .findFirst()
                .orElseThrow()
                .timeS()
                .orElseThrow();
        int next = 0;
        while (time[next] <= heatOn + 300) {
            next++;
        }
        run.read(ReadingKind.BOILER, "180 degC", false);
        RunView.ReadingView reading = run.look().readings().get(0);
        assertThat(reading.value()).isCloseTo(453.15, within(1e-9));
        assertThat(reading.computed().orElseThrow())
                .isBetween(Math.min(oil[next - 1], oil[next]) - 1e-9, Math.max(oil[next - 1], oil[next]) + 1e-9);
        assertThat(bench.log.get(bench.log.size() - 1).text()).isEqualTo("180 degC");
        assertThat(bench.log.get(bench.log.size() - 1).unit()).isEqualTo("K");
        Outcome power = run.read(ReadingKind.POWER, "1.85 kW", false);
        assertThat(power.words()).isEqualTo("Watts 1.85 kW; computed for now 2.20 kW.");
        assertThat(run.read(ReadingKind.CHAMBER, "3 Pa", false).words()).contains("nothing is computed");
    }

    @Test
    void heatThatGoesOnLateMovesWhatReadingsAreComparedWith() {
        run.start(Clock.FROM_COLD);
        bench.pass(bench.planS(Action.HEAT) + 240);
        run.read(ReadingKind.POWER, "0 W", false);
        run.read(ReadingKind.BOILER, "20 degC", false);
        assertThat(run.look().readings().get(0).computed().orElseThrow()).isZero();
        assertThat(run.look().readings().get(1).computed().orElseThrow()).isLessThan(310);
        run.tick(bench.number(Action.HEAT), true);
        bench.pass(1);
        run.read(ReadingKind.BOILER, "20 degC", false);
        assertThat(run.look().readings().get(2).computed().orElseThrow()).isLessThan(310);
        assertThat(bench.left("every jet is full"))
                .isCloseTo(bench.planS(Action.LOOK_FULL) - bench.planS(Action.HEAT) - 1, within(1e-6));
    }

    @Test
    void readingsThatCannotBeMeantAreRefusedOrAskedAbout() {
        bench.heated();
        assertThat(run.read(ReadingKind.BOILER, "hot", false).kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(run.read(ReadingKind.BOILER, "180", false).words()).startsWith("Boiler:");
        assertThat(run.read(ReadingKind.BOILER, "180 Pa", false).kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(run.read(ReadingKind.WATER_OUT, "900 degC", true).words()).contains("accepted is");
        assertThat(run.look().readings()).isEmpty();
        // 5 Pa are computed: 40 Torr is a thousand times too much, 40 mTorr is what a gauge shows
        Outcome slip = run.read(ReadingKind.FORELINE, "40 Torr", false);
        assertThat(slip.kind()).isEqualTo(Outcome.Kind.WARNED);
        assertThat(slip.words()).contains("40 mTorr", "Enter again");
        assertThat(run.look().readings()).isEmpty();
        assertThat(run.read(ReadingKind.FORELINE, "40 Torr", true).isDone()).isTrue();
        assertThat(run.look().readings()).hasSize(1);
        assertThat(run.read(ReadingKind.POWER, "10e-3 kW", false).kind()).isEqualTo(Outcome.Kind.WARNED);
    }

    @Test
    void theFirstJetSeenStretchesWhatRemains() {
        bench.heated();
        double planned = bench.planS(Action.LOOK_FIRST_JET) - bench.planS(Action.HEAT);
        double left = bench.planS(Action.LOOK_FULL) - bench.planS(Action.LOOK_FIRST_JET);
        bench.pass(planned * 1.2);
        run.read(ReadingKind.POWER, "1.2 kW", false);
        assertThat(run.see(Sight.FIRST_JET).isDone()).isTrue();
        RunView view = run.look();
        assertThat(bench.left("every jet is full")).isCloseTo(1.2 * left, within(1e-6));
        assertThat(view.why())
                .startsWith("The first jet came ")
                .contains("1.20 times as long")
                .contains("84 % of the computed ones");
        bench.pass(10_000);
        assertThat(bench.left("every jet is full")).isZero();
        assertThat(run.see(Sight.FIRST_JET).kind()).isEqualTo(Outcome.Kind.REFUSED);
    }

    @Test
    void theBoilersTemperatureStretchesTooUpAndDown() {
        bench.heated();
        bench.pass(300);
        run.read(ReadingKind.BOILER, "150 degC", false);
        assertThat(run.look().why()).startsWith("A boiler at 150 degC came 5 min after heat-on, computed ");
        run.start(Clock.FROM_HOT);
        assertThat(run.look().why()).contains("until the heat is switched");
        run.tick(bench.number(Action.CLOSE_VALVE), true);
        run.tick(bench.number(Action.HEAT_OFF), true);
        double before = bench.left("water and backing pump may stop");
        bench.pass(3600);
        run.read(ReadingKind.BOILER, "150 degC", false);
        assertThat(run.look().why()).startsWith("A boiler at 150 degC came 1 h after heat-off, computed ");
        assertThat(bench.left("water and backing pump may stop")).isGreaterThan(before - 3600);
    }

    @Test
    void aStopMayBeginAtAnyTimeAndEndsTheStart() {
        run.start(Clock.FROM_COLD);
        bench.pass(100);
        assertThat(run.start(Clock.FROM_HOT).isDone()).isTrue();
        assertThat(run.look().current().orElseThrow().step().moment().clock()).isEqualTo(Clock.FROM_HOT);
        assertThat(run.tick(1, false).kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(run.see(Sight.TOP_JET).kind()).isEqualTo(Outcome.Kind.REFUSED);
        assertThat(run.takeBack().isDone()).isTrue();
        assertThat(run.look().clockS()).isEqualTo(100);
        assertThat(run.tick(1, false).isDone()).isTrue();
    }

    @Test
    void takingBackUndoesTheLastStepAndThenTheClock() {
        run.start(Clock.FROM_COLD);
        run.tickNext(false);
        bench.pass(2);
        run.tickNext(false);
        assertThat(run.takeBack().words()).isEqualTo("Step 2 is taken back.");
        assertThat(run.takeBack().words()).isEqualTo("Step 1 is taken back.");
        assertThat(run.takeBack().words()).contains("clock");
        assertThat(run.look().clock()).isEmpty();
        assertThat(run.takeBack().kind()).isEqualTo(Outcome.Kind.REFUSED);
    }

    @Test
    void anOverdueHoldCallsOnceUntilItIsDoneAndAgainWhenItIsTakenBack() {
        run.start(Clock.FROM_COLD);
        bench.pass(119);
        assertThat(calls(run.look())).isFalse();
        bench.pass(2);
        RunView view = run.look();
        assertThat(calls(view)).isTrue();
        // backing pump and water are both awaited within two minutes
        assertThat(view.alarms()).hasSize(2);
        assertThat(view.alarms().get(0).sentence())
                .contains("Step 1 is overdue")
                .contains("2 min")
                .contains("Do not heat");
        assertThat(view.steps().get(0).overdue()).isTrue();
        bench.pass(100);
        assertThat(run.look().alarms()).hasSize(2);
        run.acknowledge();
        assertThat(calls(run.look())).isFalse();
        assertThat(run.acknowledge().isDone()).isFalse();
        run.tick(1, false);
        run.untick(1);
        assertThat(run.look().alarms()).hasSize(3);
        assertThat(calls(run.look())).isTrue();
        assertThat(kinds().stream().filter(k -> k == LogKind.ALARM)).hasSize(3);
    }

    @Test
    void aReadingPastItsLimitCallsOnceUntilItIsBackAndPassesAgain() {
        bench.heated();
        bench.pass(30);
        assertThat(run.read(ReadingKind.WATER_OUT, "60 degC", true).isDone()).isTrue();
        assertThat(run.look().alarms()).hasSize(1);
        assertThat(run.look().alarms().get(0).sentence())
                .isEqualTo("Water out is at 60.0 degC. Limit (water out, at most): 52.0 degC.");
        run.read(ReadingKind.WATER_OUT, "61 degC", true);
        assertThat(run.look().alarms()).hasSize(1);
        run.read(ReadingKind.WATER_OUT, "30 degC", true);
        run.look();
        run.read(ReadingKind.WATER_OUT, "61 degC", true);
        assertThat(run.look().alarms()).hasSize(2);
    }

    @Test
    void aHighForelineCallsOnlyWithHeat() {
        run.start(Clock.FROM_COLD);
        run.read(ReadingKind.FORELINE, "1000 Pa", false);
        assertThat(calls(run.look())).isFalse();
        run.tick(bench.number(Action.HEAT), true);
        assertThat(run.look().alarms().get(0).sentence()).contains("foreline with heat");
    }

    @Test
    void aRunThatIsTakenUpIsTheSameAsBefore() {
        bench.heated();
        bench.pass(130);
        run.read(ReadingKind.WATER_OUT, "60 degC", true);
        run.look();
        run.acknowledge();
        bench.pass(400);
        run.see(Sight.FIRST_JET);
        RunView before = run.look();
        List<LogEntry> lines = List.copyOf(bench.log);

        Bench again = new Bench();
        again.pass(java.time.Duration.between(RunHeads.BEGUN, bench.source().instant())
                .toSeconds());
        again.run.takeUp(new RunRecord(null, RunHeads.head("any"), lines, List.of(), new byte[0]));
        assertThat(again.run.look()).isEqualTo(before);
        assertThat(again.log).isEmpty();
    }

    @Test
    void everyLineSurvivesTheFile() throws LogLine.CellFault {
        bench.heated();
        bench.pass(130.123);
        run.read(ReadingKind.FORELINE, "40 mTorr", false);
        assertThat(run.note("smell of oil, \"slight\"").isDone()).isTrue();
        assertThat(run.note(" ").isDone()).isFalse();
        for (LogEntry entry : bench.log) {
            String line = RunLogReader.text(LogLine.of(entry)).replace("\r\n", "");
            assertThat(LogLine.read(line)).isEqualTo(entry);
        }
    }

    @Test
    void nothingHappensAfterTheEnd() {
        run.start(Clock.FROM_COLD);
        assertThat(run.end().isDone()).isTrue();
        int lines = bench.log.size();
        bench.pass(10_000);
        assertThat(run.look().ended()).isTrue();
        run.tickNext(true);
        run.takeBack();
        run.note("late");
        run.see(Sight.FIRST_JET);
        run.read(ReadingKind.FORELINE, "40 mTorr", true);
        run.start(Clock.FROM_HOT);
        run.end();
        assertThat(bench.log).hasSize(lines);
    }

    @Test
    void everyVariantOfEveryDemoIsWalkedThroughFromBeginningToEnd() {
        for (String demo : Counts.firstOf("mirror-club", "teaching-lab", "neon-workshop")) {
            for (Variant variant : Variant.values()) {
                PlanAnswer plan = PlanCases.plan(PlanCases.demo(demo), variant);
                if (plan.plan().isEmpty()) {
                    continue;
                }
                Bench other = new Bench(plan);
                for (int i = 0; i < 200 && other.run.look().current().isPresent(); i++) {
                    other.pass(30);
                    Outcome outcome = other.run.tickNext(false);
                    assertThat(outcome.isDone())
                            .as(demo + " " + variant + " " + outcome)
                            .isTrue();
                    for (ReadingKind kind : ReadingKind.values()) {
                        assertThat(other.run.look().why()).isNotBlank();
                        other.run.read(kind, "1 " + kind.unit(), true);
                    }
                }
                assertThat(other.run.look().current()).isEmpty();
                assertThat(other.run.look().remaining()).isEmpty();
                assertThat(other.run.end().isDone()).isTrue();
            }
        }
    }

    private static boolean calls(RunView view) {
        return view.alarms().stream().anyMatch(alarm -> !alarm.acknowledged());
    }
}
