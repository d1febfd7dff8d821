package boilwright.sequence;

import static boilwright.sequence.PlanCases.breach;
import static boilwright.sequence.PlanCases.demo;
import static boilwright.sequence.PlanCases.held;
import static boilwright.sequence.PlanCases.moved;
import static boilwright.sequence.PlanCases.plan;
import static boilwright.sequence.PlanCases.retimed;
import static boilwright.sequence.PlanCases.step;
import static boilwright.sequence.PlanCases.without;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.fluid.FluidLibrary;
import boilwright.rig.HeatSource;
import boilwright.rig.Rig;
import boilwright.rig.file.Texts;
import boilwright.thermal.EventKind;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.TestRigs;
import boilwright.thermal.TimeSeries;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** One breach of every rule, put into a plan that was safe: the rule, the moment and the simulated value are named. */
class BrokenRulesTest {
    private static final Rig CLUB = demo("mirror-club");
    private static final Rig LAB = demo("teaching-lab");
    private static final Plan OF_CLUB = plan(CLUB, Variant.NORMAL).plan().orElseThrow();
    private static final Plan OF_LAB = plan(LAB, Variant.NORMAL).plan().orElseThrow();

    private static Moment hot(double seconds) {
        return new Moment(Clock.FROM_HOT, seconds);
    }

    private static Moment cold(double seconds) {
        return new Moment(Clock.FROM_COLD, seconds);
    }

    /** A value of a run, read without the checker's own reader: the record at or next after a time. */
    private static double next(TimeSeries series, SeriesQuantity quantity, double seconds) {
        double[] time = series.column(SeriesQuantity.TIME).values();
        int i = 0;
        while (i < time.length - 1 && time[i] < seconds) {
            i++;
        }
        return series.column(quantity).values()[i];
    }

    private static void assertNamed(PlanAnswer answer, RuleFinding breach) {
        assertThat(answer.safe()).isFalse();
        assertThat(answer.plan()).isPresent();
        assertThat(answer.verdict())
                .contains(
                        breach.rule().sentence(), breach.moment().orElseThrow().inWords(), breach.value());
    }

    @Test
    void theUnchangedPlansAreSafe() {
        assertThat(held(CLUB, OF_CLUB).safe()).isTrue();
        assertThat(held(LAB, OF_LAB).safe()).isTrue();
    }

    @Test
    void heatWithoutWater() {
        PlanAnswer answer = held(CLUB, without(OF_CLUB, Action.COOLING_ON));
        RuleFinding breach = breach(answer, Rule.WATER_WITH_HEAT);
        assertThat(breach.moment()).contains(step(OF_CLUB, Action.HEAT).moment());
        assertThat(breach.value()).contains("no flow", "2.20 kW");
        assertNamed(answer, breach);
    }

    @Test
    void waterTurnedOffWhileHeated() {
        List<PlanStep> steps = new ArrayList<>(OF_CLUB.steps());
        int run = steps.indexOf(step(OF_CLUB, Action.RUN));
        steps.add(run, PlanCases.step(Action.COOLING_OFF, steps.get(run).moment()));
        PlanAnswer answer = held(CLUB, new Plan(Variant.NORMAL, steps));
        RuleFinding breach = breach(answer, Rule.WATER_WITH_HEAT);
        assertThat(breach.moment()).contains(step(OF_CLUB, Action.RUN).moment());
        assertNamed(answer, breach);
    }

    /** The chamber is still being drawn down through the cold pump: the simulated foreline is far from down. */
    @Test
    void heatAboveTheForelineLimit() {
        Plan early = retimed(OF_LAB, s -> s.moment().clock() == Clock.FROM_COLD, m -> cold(Math.min(2, m.atS())));
        PlanAnswer answer = held(LAB, early);
        RuleFinding breach = breach(answer, Rule.FORELINE_WITH_HEAT);
        assertThat(breach.moment()).contains(cold(2));
        assertThat(breach.value()).contains("kPa");
        assertThat(breach.limit()).contains("66.5 Pa");
        assertNamed(answer, breach);
    }

    @Test
    void heatTwoMinutesAfterTheBackingPump() {
        Plan early = retimed(OF_CLUB, s -> s.moment().clock() == Clock.FROM_COLD, m -> cold(Math.min(120, m.atS())));
        PlanAnswer answer = held(CLUB, early);
        RuleFinding breach = breach(answer, Rule.BACKING_BEFORE_HEAT);
        assertThat(breach.moment()).contains(cold(120));
        assertThat(breach.value()).isEqualTo("2 min");
        assertNamed(answer, breach);
    }

    @Test
    void heatWithoutTheBackingPump() {
        PlanAnswer answer = held(CLUB, without(OF_CLUB, Action.BACKING_ON));
        assertThat(breach(answer, Rule.BACKING_BEFORE_HEAT).value()).contains("off");
        assertThat(breach(answer, Rule.FORELINE_WITH_HEAT).value()).contains("101 kPa");
    }

    /** Full power where the rig's schedule has two thirds: the oil passes its limit in a run made for that plan. */
    @Test
    void heatPastTheOilsLimit() throws IOException {
        String text = Files.readString(Path.of("src/main/resources/boilwright/demo/mirror-club.json"))
                .replace("\"power\": \"100 %\"", "\"power\": \"65 %\"")
                .replace("\"requiredBoilerPressure\"", "\"oilBulk\": \"236 degC\", \"requiredBoilerPressure\"");
        Rig rig = Texts.rig(text, FluidLibrary.builtIn().workingFluids());
        Plan safe = plan(rig, Variant.NORMAL).plan().orElseThrow();
        Plan strong = new Plan(
                Variant.NORMAL,
                safe.steps().stream()
                        .map(s -> s.action() == Action.HEAT
                                ? new PlanStep(
                                        s.action(),
                                        s.moment(),
                                        new HeatLevel(1, OptionalDouble.empty()),
                                        s.latestS(),
                                        s.words())
                                : s)
                        .toList());
        PlanAnswer answer = held(rig, strong);
        RuleFinding breach = answer.findings().stream()
                .filter(f -> f.rule() == Rule.HEAT_WITHIN_LIMITS && f.value().contains("oil temperature"))
                .findFirst()
                .orElseThrow();
        TimeSeries series = answer.check().warmup().series();
        double passed = breach.moment().orElseThrow().atS() - 120;
        assertThat(next(series, SeriesQuantity.LIQUID_TEMPERATURE, passed - 60)).isLessThan(509.15);
        assertThat(next(series, SeriesQuantity.LIQUID_TEMPERATURE, passed + 60)).isGreaterThan(509.15);
        assertThat(breach.limit()).contains("236 degC");
        assertNamed(answer, breach);
    }

    @Test
    void heatWithNobodyHavingSeenToTheWayOut() {
        PlanAnswer answer = held(CLUB, without(OF_CLUB, Action.OPEN_OUTLET));
        RuleFinding breach = breach(answer, Rule.OUTLET_OPEN);
        assertThat(breach.moment()).contains(step(OF_CLUB, Action.HEAT).moment());
        assertThat(breach.value()).contains("kW");
        assertNamed(answer, breach);
    }

    @Test
    void aFlameInARoomThatNobodyAired() {
        HeatSource burner = new HeatSource.GasBurner(2500, Optional.empty());
        Rig rig = TestRigs.fourStageGlass(burner);
        Plan safe = plan(rig, Variant.NORMAL).plan().orElseThrow();
        assertThat(safe.steps()).extracting(PlanStep::action).contains(Action.AIR_ROOM);
        PlanAnswer answer = held(rig, without(safe, Action.AIR_ROOM));
        RuleFinding breach = breach(answer, Rule.AIR_FOR_FLAME);
        assertThat(breach.moment()).contains(step(safe, Action.HEAT).moment());
        assertThat(breach.value()).contains("2.50 kW");
        assertNamed(answer, breach);
    }

    @Test
    void theValveOpenedAboveTheCrossover() {
        double rough = step(OF_CLUB, Action.ROUGH_CHAMBER).moment().atS();
        PlanAnswer answer = held(CLUB, retimed(OF_CLUB, s -> s.action() == Action.OPEN_VALVE, m -> cold(rough + 60)));
        RuleFinding breach = breach(answer, Rule.VALVE_BELOW_CROSSOVER);
        assertThat(breach.moment()).contains(cold(rough + 60));
        assertThat(breach.value()).matches("[\\d.]+ k?Pa");
        assertNamed(answer, breach);
        RuleFinding unroughed = breach(held(CLUB, without(OF_CLUB, Action.ROUGH_CHAMBER)), Rule.VALVE_BELOW_CROSSOVER);
        assertThat(unroughed.value()).isEqualTo("101 kPa");
    }

    @Test
    void theValveOpenedBeforeTheJetsAreFull() {
        double lit = step(OF_CLUB, Action.LOOK_FIRST_JET).moment().atS();
        Plan early = retimed(
                OF_CLUB,
                s -> s.action() == Action.ROUGH_CHAMBER || s.action() == Action.OPEN_VALVE,
                m -> cold(lit - 200));
        List<PlanStep> sorted = new ArrayList<>(early.steps());
        sorted.sort(java.util.Comparator.comparing((PlanStep s) -> s.moment().clock())
                .thenComparingDouble(s -> s.moment().atS()));
        PlanAnswer answer = held(CLUB, new Plan(Variant.NORMAL, sorted));
        RuleFinding breach = breach(answer, Rule.VALVE_WITH_JETS);
        assertThat(breach.moment()).contains(cold(lit - 200));
        assertThat(breach.value()).contains("0 %");
        assertNamed(answer, breach);
    }

    @Test
    void theValveLeftOpenWhenTheJetsGoOut() {
        PlanAnswer answer = held(CLUB, without(OF_CLUB, Action.CLOSE_VALVE));
        RuleFinding breach = breach(answer, Rule.VALVE_WITH_JETS);
        double lost = answer.cooldown().events().stream()
                .filter(e -> e.kind() == EventKind.JET_LOST)
                .mapToDouble(e -> e.timeS().orElseThrow())
                .min()
                .orElseThrow();
        assertThat(breach.moment()).contains(hot(lost));
        assertThat(breach.value()).contains("first jet");
        assertNamed(answer, breach);
    }

    @Test
    void airOntoHotOil() {
        PlanAnswer answer = held(
                CLUB,
                moved(
                        retimed(OF_CLUB, s -> s.action() == Action.LET_AIR_IN, m -> hot(1800)),
                        Action.LET_AIR_IN,
                        Action.LOOK_JETS_GONE));
        RuleFinding breach = breach(answer, Rule.AIR_ON_COLD_OIL);
        assertThat(breach.moment()).contains(hot(1800));
        double oil = next(answer.cooldown().series(), SeriesQuantity.LIQUID_TEMPERATURE, 1800) - 273.15;
        assertThat(Double.parseDouble(breach.value().split(" ")[0])).isBetween(oil - 1, oil + 1);
        assertNamed(answer, breach);
    }

    @Test
    void waterStoppedWhileTheOilIsHot() {
        PlanAnswer answer = held(
                CLUB,
                moved(
                        retimed(OF_CLUB, s -> s.action() == Action.COOLING_OFF, m -> hot(900)),
                        Action.COOLING_OFF,
                        Action.LOOK_JETS_GONE));
        RuleFinding breach = breach(answer, Rule.WATER_UNTIL_COLD);
        assertThat(breach.moment()).contains(hot(900));
        double oil = next(answer.cooldown().series(), SeriesQuantity.LIQUID_TEMPERATURE, 900) - 273.15;
        assertThat(Double.parseDouble(breach.value().split(" ")[0])).isBetween(oil - 1, oil + 1);
        assertNamed(answer, breach);
    }

    @Test
    void backingPumpStoppedWhileTheOilIsHot() {
        PlanAnswer answer = held(CLUB, moved(OF_CLUB, Action.BACKING_OFF, Action.LOOK_JETS_GONE));
        assertThat(answer.safe())
                .as("a time that stands later in the plan is kept")
                .isTrue();
        PlanAnswer early = held(
                CLUB,
                moved(
                        retimed(OF_CLUB, s -> s.action() == Action.BACKING_OFF, m -> hot(600)),
                        Action.BACKING_OFF,
                        Action.LOOK_JETS_GONE));
        RuleFinding breach = breach(early, Rule.BACKING_UNTIL_COLD);
        assertThat(breach.moment()).contains(hot(600));
        assertNamed(early, breach);
    }

    /** A step that stands later in the list is done later, whatever time it carries. */
    @Test
    void coldWaterOntoHotDryGlass() {
        PlanAnswer answer = held(LAB, moved(OF_LAB, Action.COOLING_ON, Action.LOOK_FULL));
        RuleFinding breach = breach(answer, Rule.NO_COLD_SHOCK);
        assertThat(breach.moment()).contains(step(OF_LAB, Action.LOOK_FULL).moment());
        assertThat(breach.value()).contains("against water of 16.0 degC");
        assertThat(breach.limit()).contains("120 K");
        assertNamed(answer, breach);
        assertThat(breach(answer, Rule.WATER_WITH_HEAT).moment())
                .contains(step(OF_LAB, Action.HEAT).moment());
    }

    /** Without the step that turns the heat off, everything that follows is done to a heated pump. */
    @Test
    void aForgottenHeatOff() {
        PlanAnswer answer = held(CLUB, without(OF_CLUB, Action.HEAT_OFF));
        for (Rule rule :
                List.of(Rule.WATER_WITH_HEAT, Rule.WATER_UNTIL_COLD, Rule.BACKING_UNTIL_COLD, Rule.AIR_ON_COLD_OIL)) {
            assertThat(breach(answer, rule).value()).as(rule.id()).isNotBlank();
        }
    }
}
