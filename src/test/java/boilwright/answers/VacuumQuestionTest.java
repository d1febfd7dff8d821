package boilwright.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.errors.InputRefusedException;
import boilwright.fluid.FluidLibrary;
import boilwright.gasflow.Gas;
import boilwright.invariants.RandomRigs;
import boilwright.report.VacuumJson;
import boilwright.rig.Foreline;
import boilwright.rig.GasSide;
import boilwright.rig.LinePiece;
import boilwright.rig.PieceKind;
import boilwright.rig.Rig;
import boilwright.rig.TypicalValues;
import boilwright.rig.file.RigWriter;
import boilwright.rig.file.Texts;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.StageState;
import boilwright.thermal.TestRigs;
import boilwright.vacuum.VacuumRigs;
import boilwright.vacuum.VacuumTimeline;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The gas side of whole rigs, jets and all. */
class VacuumQuestionTest {
    private static final FluidLibrary LIBRARY = FluidLibrary.builtIn();

    private static VacuumAnswer answer(Rig rig) {
        return Stored.answer(new VacuumQuestion(Stored.asked(rig), Gas.AIR, TypicalValues.PUMPED_S));
    }

    /** A cartridge that is empty before the jets take over: no throughput is left, and JSON has no number for "without an end". */
    @Test
    void jetsThatCarryNothingAreOverloadedWithoutAnEnd() {
        VacuumAnswer answer = answer(RandomRigs.of(20261201, 2).rig());
        assertThat(answer.timeline().crossover().overloadS()).isInfinite();
        assertThat(VacuumJson.write(answer)).contains("\"overloadS\" : null");
    }

    /** Common practice, no source: a narrow plastic hose can hold the gauge decades above the inlet while every jet is lit. */
    @Test
    void theHoseIsBlamedAndTheFirstFixCuresItInARerun() {
        VacuumAnswer answer = answer(VacuumRigs.hoseCase());
        assertThat(answer.check().steady().stages()).allMatch(StageState::full);
        assertThat(answer.end().gaugePa() / answer.end().inletPa()).isGreaterThan(100);
        assertThat(answer.verdict())
                .contains("the gas side holds the gauge up, not the heat")
                .contains("hose")
                .contains("%");
        assertThat(answer.end().sources().get(0).source().path()).isEqualTo("vacuum.line[0]");
        Fix first = answer.fixes().get(0);
        assertThat(first.title()).contains("hose");
        // by way of a file, as a person would
        Rig changed = Texts.rig(RigWriter.write(first.rig()), LIBRARY.workingFluids());
        VacuumAnswer again = answer(changed);
        assertThat(again.end().gaugePa() / first.gaugePa()).isCloseTo(1, within(0.01));
        assertThat(first.factor()).isGreaterThan(10);
        assertThat(answer.fixes()).isSortedAccordingTo((a, b) -> Double.compare(a.gaugePa(), b.gaugePa()));
    }

    @Test
    void timeLineRunsIntoTheRest() {
        VacuumAnswer answer = answer(VacuumRigs.hoseCase());
        VacuumTimeline line = answer.timeline();
        int last = line.timeS().length - 1;
        assertThat(line.timeS()[last]).isEqualTo(answer.lookS());
        assertThat(line.gaugePa()[last] / answer.end().gaugePa()).isCloseTo(1, within(0.01));
        assertThat(line.inletPa()[last] / answer.end().inletPa()).isCloseTo(1, within(0.01));
        assertThat(line.forelinePa()[last] / answer.end().forelinePa()).isCloseTo(1, within(0.01));
        assertThat(line.balanceRelative()).isLessThan(1e-3);
        assertThat(line.timeS()).isSorted();
    }

    @Test
    void whileTheTopJetIsDarkTheHeatIsAtFault() {
        Rig rig = VacuumRigs.hoseCase();
        VacuumAnswer answer = answer(TestRigs.fourStageGlass(TestRigs.poorPlate())
                .withForeline(rig.foreline())
                .withVacuum(rig.vacuum().orElseThrow()));
        assertThat(answer.verdict())
                .contains("Too little heat", "It is both, and more than one change")
                .doesNotContain("single fix");
        assertThat(answer.end().gaugePa()).isGreaterThan(answer.end().forelinePa());
    }

    @Test
    void aLeakNeverLowersAPressure() {
        Rig rig = VacuumRigs.hoseCase();
        GasSide side = rig.vacuum().orElseThrow();
        double[] before = {0, 0, 0, 0};
        double[] leaks = Counts.of(0, 1) == 0
                ? new double[] {0, 1e-5, 1e-2, 1}
                : new double[] {0, 1e-7, 1e-5, 1e-3, 1e-2, 0.1, 1};
        for (double leak : leaks) {
            GasSide.Chamber c = side.chamber();
            Rig leaking = rig.withVacuum(new GasSide(
                    new GasSide.Chamber(c.volumeM3(), c.sinceAirS(), c.exposure(), c.surfaces(), c.seals(), leak),
                    side.line(),
                    side.gauge(),
                    List.of(),
                    side.targetPa()));
            VacuumAnswer answer = answer(leaking);
            double[] now = {
                answer.end().chamberPa(),
                answer.end().gaugePa(),
                answer.end().inletPa(),
                answer.end().forelinePa()
            };
            for (int i = 0; i < now.length; i++) {
                assertThat(now[i]).isGreaterThanOrEqualTo(before[i]);
            }
            before = now;
        }
        // more than the jets can take: nothing holds the foreline away
        assertThat(before[2]).isGreaterThan(10);
    }

    @Test
    void forelineAboveCriticalBackingPutsTheJetsOut() {
        Rig rig = VacuumRigs.hoseCase();
        Foreline.Backing good = (Foreline.Backing) rig.foreline();
        LinePiece leaking =
                new LinePiece(PieceKind.TUBE, "foreline", good.line().get(0).shape(), Optional.empty(), 0.5);
        VacuumAnswer answer =
                answer(rig.withForeline(new Foreline.Backing(List.of(leaking), good.volumeM3(), good.pump())));
        assertThat(answer.check().steady().forelinePa())
                .isGreaterThan(answer(rig).check().steady().criticalBackingPa());
        assertThat(answer.check().steady().stages()).noneMatch(StageState::lit);
    }

    @Test
    void degassingRaisesTheForelineAndPasses() {
        VacuumAnswer answer = answer(VacuumRigs.hoseCase());
        double[] foreline =
                answer.check().warmup().series().column(SeriesQuantity.FORELINE).values();
        double rest = answer.check().steady().forelinePa();
        assertThat(Arrays.stream(foreline).max().orElseThrow()).isGreaterThan(1.5 * rest);
        assertThat(foreline[foreline.length - 1] / rest).isCloseTo(1, within(0.02));
    }

    @Test
    void aRigWithoutChamberIsToldSo() {
        assertThatThrownBy(() -> answer(TestRigs.metal150(2200)))
                .isInstanceOf(InputRefusedException.class)
                .hasMessageContaining("has no field vacuum");
    }
}
