package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Stored;
import boilwright.drill.DrillAnswer;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.drill.Interlock;
import boilwright.rig.Protection.TripKind;
import boilwright.rig.Rig;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import boilwright.thermal.Fault;
import boilwright.thermal.RunSimulator;
import boilwright.vacuum.VacuumRigs;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;

/** Whatever the rig, every fault that it can have is played through, energy closes, and a cut never brings a limit sooner, but that of the film. */
class DrillsOfRandomRigsTest {
    private static final double SAME_S = 0.2;

    @Property(tries = 4, seed = "7201", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void everyFaultIsPlayedThrough(@ForAll Rig rig) {
        assertDrills(rig);
    }

    @Tag("deep")
    @Property(tries = 200, seed = "7202", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void everyFaultIsPlayedThroughForManyMore(@ForAll Rig rig) {
        assertDrills(rig);
    }

    private static void assertDrills(Rig drawn) {
        // a foreline that follows mercury's vapour takes seconds a run
        Assume.that(!drawn.fluidId().equals("mercury"));
        Rig rig = drawn.withForeline(VacuumRigs.backing());
        DrillSet set = Stored.answer(new DrillQuestion(
                Stored.asked(rig), List.of(Fault.values()), OptionalDouble.empty(), DrillQuestion.LATE_S));
        assertThat(set.played().size() + set.notPlayed().size()).isEqualTo(Fault.values().length);
        for (DrillAnswer drill : set.played()) {
            for (DrillRun run : List.of(drill.heatOn(), drill.cutLate(), drill.cutAtOnce(), drill.asItIs())) {
                assertThat(run.run().balance().closureRelative())
                        .as(drill.fault().id())
                        .isLessThan(RunSimulator.CLOSURE_LIMIT);
            }
            for (int i = 0; i < drill.heatOn().limits().size(); i++) {
                // thinner vapour condenses less on the same wall, so that a cut can bring this one sooner
                if (drill.heatOn().limits().get(i).limit() == DrillLimit.FILM) {
                    continue;
                }
                assertThat(drill.heatOn().limits().get(i).orNever())
                        .as(drill.fault() + " " + drill.heatOn().limits().get(i).limit())
                        .isLessThanOrEqualTo(drill.cutAtOnce().limits().get(i).orNever() + SAME_S);
            }
            assertThat(drill.first()).isNotEmpty();
        }
        for (Interlock lock : set.interlocks()) {
            lock.setPoint().ifPresent(at -> {
                if (lock.kind() == TripKind.WATER_FLOW) {
                    assertThat(at).isBetween(lock.limit(), lock.usual());
                } else {
                    assertThat(at).isBetween(lock.usual(), lock.limit());
                }
            });
        }
    }
}
