package boilwright.choice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.answers.CheckAnswer;
import boilwright.answers.MarginId;
import boilwright.answers.Moment;
import boilwright.answers.RestAnswer;
import boilwright.choice.SizeAnswer.Least;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.file.RigEdit;
import boilwright.thermal.TestRigs;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sizing says is enough is enough by the check of the rig changed accordingly, and no less is. */
class SizeQuestionTest {
    private static Rig withPower(Rig rig, double watts) {
        return rig.withHeatSource(rig.heatSource().withRatedPower(watts));
    }

    private static Least least(SizeAnswer answer, String id) {
        return answer.least().stream()
                .filter(l -> l.figure().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theCheckFindsARigAtRestAsItIsFoundWithoutAWarmUp() {
        Rig rig = ChoiceCases.demo("mirror-club");
        CheckAnswer check = ChoiceCases.check(rig);
        RestAnswer rest = ChoiceCases.rest(rig);
        assertThat(rest.steady()).isEqualTo(check.steady());
        assertThat(rest.needed()).isEqualTo(check.needed());
        assertThat(check.findings().stream()
                        .filter(m -> m.id() != MarginId.HEAT)
                        .toList())
                .containsAll(rest.margins().stream()
                        .filter(m -> m.id() != MarginId.HEAT)
                        .toList());
    }

    /** Rigs on which some power is enough. */
    static List<Rig> powered() {
        return List.of(
                ChoiceCases.demo("mirror-club"),
                ChoiceCases.demo("teaching-lab"),
                TestRigs.fourStageGlass(TestRigs.flame(1600)),
                TestRigs.metal150(2200),
                ChoiceCases.demo("mirror-club").withHeatSource(new HeatSource.ImmersedElement(1500, 0.03)));
    }

    @ParameterizedTest
    @MethodSource("powered")
    void atTheLeastPowerForFullJetsTheyAreJustFull(Rig rig) {
        double power = least(ChoiceCases.size(rig, 1), "rated-power").value().orElseThrow();
        RestAnswer there = ChoiceCases.rest(withPower(rig, power));
        assertThat(ChoiceCases.heatRatio(there)).isCloseTo(1, within(0.005));
        assertThat(ChoiceCases.governingFraction(there)).isCloseTo(1, within(0.005));
        RestAnswer less = ChoiceCases.rest(withPower(rig, 0.97 * power));
        assertThat(ChoiceCases.governingFraction(less)).isLessThan(1);
        assertThat(ChoiceCases.heatRatio(less)).isLessThan(1);
    }

    static Stream<Rig> withReserve() {
        // the mantle of the teaching laboratory can't give a quarter more
        return powered().stream().filter(rig -> !rig.name().equals("Teaching lab"));
    }

    @ParameterizedTest
    @MethodSource("withReserve")
    void atTheLeastPowerForTheUsualMarginTheCheckHasThatMargin(Rig rig) {
        SizeAnswer answer = ChoiceCases.size(rig, SizeQuestion.USUAL_MARGIN);
        double power = least(answer, "rated-power").value().orElseThrow();
        assertThat(ChoiceCases.heatRatio(ChoiceCases.rest(withPower(rig, power))))
                .isCloseTo(1.25, within(0.005));
        assertThat(ChoiceCases.governingFraction(ChoiceCases.rest(withPower(rig, power))))
                .isGreaterThan(1);
        assertThat(ChoiceCases.heatRatio(ChoiceCases.rest(withPower(rig, 0.97 * power))))
                .isLessThan(1.245);
    }

    @ParameterizedTest
    @ValueSource(strings = {"neon-workshop", "teaching-lab", "mirror-club"})
    void everyLeastFigureGivesTheMarginInTheCheck(String demo) {
        Rig rig = ChoiceCases.demo(demo);
        for (double margin : new double[] {1, 1.25}) {
            SizeAnswer answer = ChoiceCases.size(rig, margin);
            for (Least least : answer.least()) {
                least.value()
                        .ifPresent(value -> assertThat(ChoiceCases.heatRatio(
                                        ChoiceCases.rest(LeastSearch.with(rig, least.figure(), value))))
                                .as(demo + " " + least.figure())
                                .isCloseTo(margin, within(0.005)));
            }
            assertThat(answer.least()).anyMatch(l -> l.value().isPresent());
        }
    }

    @Test
    void pairsGiveTheMarginTogether() {
        Rig rig = ChoiceCases.demo("neon-workshop");
        SizeAnswer answer = ChoiceCases.size(rig, 1.25);
        int tried = 0;
        for (SizeAnswer.Pair pair : answer.pairs()) {
            for (SizeAnswer.PairRow row : pair.rows()) {
                if (row.found().isPresent()) {
                    Rig both = LeastSearch.with(
                            LeastSearch.with(rig, pair.given(), row.given()),
                            pair.found(),
                            row.found().getAsDouble());
                    assertThat(ChoiceCases.heatRatio(ChoiceCases.rest(both))).isCloseTo(1.25, within(0.005));
                    tried++;
                }
            }
        }
        assertThat(tried).isGreaterThan(3);
    }

    /** No rating helps a flask that a plate touches badly; what does is named, and what limits it. */
    @Test
    void aBadContactIsNoQuestionOfRating() {
        SizeAnswer answer = ChoiceCases.size(ChoiceCases.demo("neon-workshop"), 1.25);
        assertThat(answer.isEnough()).isFalse();
        assertThat(least(answer, "rated-power").value()).isEmpty();
        assertThat(least(answer, "contact-conductance").value()).isPresent();
        assertThat(answer.window().isOpen()).isFalse();
        assertThat(answer.window().sentence()).contains("contact passes only");
        assertThat(answer.settings()).isEmpty();
        assertThat(ChoiceCases.heatRatio(ChoiceCases.rest(withPower(ChoiceCases.demo("neon-workshop"), 1e5))))
                .isLessThan(1);
    }

    @Test
    void theWindowEndsWhereTheCheckFindsItsLimit() {
        Rig rig = ChoiceCases.demo("mirror-club");
        PowerWindow window = ChoiceCases.size(rig, 1.25).window();
        assertThat(window.isOpen()).isTrue();
        assertThat(window.presentW()).isCloseTo(0.65 * 2200, within(1e-6));
        double high = window.highW().orElseThrow();
        CheckAnswer below = ChoiceCases.check(withPower(rig, 0.995 * high / 0.65));
        CheckAnswer above = ChoiceCases.check(withPower(rig, 1.005 * high / 0.65));
        assertThat(failsAtRest(below, window.limit().orElseThrow())).isFalse();
        assertThat(failsAtRest(above, window.limit().orElseThrow())).isTrue();
        double low = window.lowW().orElseThrow();
        assertThat(ChoiceCases.heatRatio(ChoiceCases.rest(withPower(rig, low / 0.65))))
                .isCloseTo(1, within(0.005));
    }

    /** The window is of what is held once hot; what the schedule gives before that is another question. */
    private static boolean failsAtRest(CheckAnswer check, MarginId id) {
        return check.findings().stream().anyMatch(m -> m.id() == id && m.moment() == Moment.REST && m.fails());
    }

    /** Fluid limits below what full jets need leave nothing to set, and the limit is named. */
    @Test
    void aLimitBelowFullJetsLeavesNoWindow() {
        Rig rig = RigEdit.of("heatSource.limit", 790).applied(ChoiceCases.demo("teaching-lab"));
        Rig limited = boilwright.rig.file.Texts.rig(
                boilwright.rig.file.RigWriter.write(rig)
                        .replaceFirst("\\}\\s*$", ",\"limits\":{\"oilBulk\":\"200 degC\"}}"),
                ChoiceCases.FLUIDS.workingFluids());
        PowerWindow window = ChoiceCases.size(limited, 1.25).window();
        assertThat(window.isOpen()).isFalse();
        assertThat(window.limit()).contains(MarginId.OIL_BULK);
        assertThat(window.highW().orElseThrow()).isLessThan(window.lowW().orElseThrow());
        assertThat(window.sentence()).contains("oil temperature");
    }

    @Test
    void settingsLieInTheWindowAndHoldingSaves() {
        SizeAnswer answer = ChoiceCases.size(ChoiceCases.demo("mirror-club"), 1.25);
        SizeAnswer.Setting warm = answer.settings().get(0);
        SizeAnswer.Setting held = answer.settings().get(1);
        assertThat(held.powerW())
                .isBetween(
                        answer.window().lowW().orElseThrow(),
                        answer.window().highW().orElseThrow());
        assertThat(held.ratio()).isCloseTo(1.1, within(0.005));
        assertThat(warm.powerW()).isGreaterThan(held.powerW());
        SizeAnswer.Saved saved = answer.saved().orElseThrow();
        assertThat(saved.inputW()).isCloseTo(warm.inputW() - held.inputW(), within(1e-9));
        assertThat(saved.flowM3PerS().orElseThrow()).isPositive();
    }

    @Test
    void aScheduleThatEndsWithTheHeatOffIsSizedAtFullPower() {
        Rig rig = ChoiceCases.demo("mirror-club")
                .withSchedule(new Schedule(List.of(new Schedule.Power(0, 1), new Schedule.Power(3600, 0))));
        SizeAnswer answer = ChoiceCases.size(rig, 1.25);
        assertThat(answer.level()).isEqualTo(1);
        assertThat(answer.isEnough()).isTrue();
        assertThat(answer.notes().get(0)).contains("heat off");
    }

    /** At rest the source gives what the pump takes, so the crossing lies on both curves. */
    @ParameterizedTest
    @MethodSource("powered")
    void theCurvesCrossWhereTheRigIsAtRest(Rig rig) {
        HeatCurves curves = ChoiceCases.size(rig, 1.25).curves();
        WallPoint crossing = curves.crossing().orElseThrow();
        assertThat(at(curves.delivered(), crossing.wallK()))
                .isCloseTo(crossing.watts(), within(0.02 * crossing.watts()));
        assertThat(at(curves.need(), crossing.wallK())).isCloseTo(crossing.watts(), within(0.03 * crossing.watts()));
        assertThat(curves.need()).isSortedAccordingTo(java.util.Comparator.comparingDouble(WallPoint::wallK));
    }

    private static double at(List<WallPoint> curve, double wallK) {
        for (int i = 1; i < curve.size(); i++) {
            WallPoint a = curve.get(i - 1);
            WallPoint b = curve.get(i);
            if (b.wallK() >= wallK) {
                return a.watts() + (b.watts() - a.watts()) * (wallK - a.wallK()) / (b.wallK() - a.wallK());
            }
        }
        throw new AssertionError("the curve ends below " + wallK);
    }
}
