package boilwright.invariants;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.CheckAnswer;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Stored;
import boilwright.answers.VacuumQuestion;
import boilwright.answers.WarmupQuestion;
import boilwright.errors.ComputationException;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.TypicalValues;
import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.PlanRulesQuestion;
import boilwright.sequence.PlanStep;
import boilwright.sequence.Variant;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import boilwright.thermal.ThermalProbe;
import boilwright.thermal.TimeEvent;
import boilwright.vacuum.Crossover;
import boilwright.vacuum.VacuumRigs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.statistics.Statistics;

/**
 * No generated plan breaks a rule, whatever rig it is for. The plans are not held against the runs they were made from, nor by
 * their own checker: the rig is run anew by another integrator, and the rules are read off those runs here once more.
 */
class PlansOfRandomRigsTest {
    /** What two integrators and whole seconds may differ by. */
    private static final double SAME_K = 0.3;

    private static final double SAME_S = 3;

    @Property(tries = 6, seed = "7113", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void noPlanBreaksARule(@ForAll Rig rig) {
        assertPlans(rig);
        Statistics.label("plan from cold").coverage(c -> c.check(true).percentage(p -> p >= 5));
    }

    @Tag("deep")
    @Property(tries = 1000, seed = "7102", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void noPlanBreaksARuleForManyMore(@ForAll Rig rig) {
        assertPlans(rig);
    }

    /** The same with a backing pump whose foreline follows the oil's gas, and a chamber roughed through or past the pump. */
    @Property(tries = 2, seed = "7112", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void noPlanBreaksARuleWithAChamber(@ForAll Rig rig) {
        assertPlansWithAChamber(rig);
    }

    @Tag("deep")
    @Property(tries = 100, seed = "7104", shrinking = ShrinkingMode.OFF, edgeCases = EdgeCasesMode.NONE)
    @Domain(RandomRigs.class)
    void noPlanBreaksARuleWithAChamberForManyMore(@ForAll Rig rig) {
        assertPlansWithAChamber(rig);
    }

    private static void assertPlansWithAChamber(Rig rig) {
        // a foreline that follows mercury's vapour takes seconds a run
        Assume.that(!rig.fluidId().equals("mercury"));
        Rig through =
                rig.withForeline(VacuumRigs.backing()).withVacuum(VacuumRigs.side(VacuumRigs.tube("neck", 0.05, 0.1)));
        Rig club = PlanCases.demo("mirror-club");
        Rig past = rig.withForeline(club.foreline()).withVacuum(club.vacuum().orElseThrow());
        for (Rig whole : List.of(through, past)) {
            // the explicit method takes minutes for a foreline that follows the gas
            assertPlans(whole, r -> runs(r).warmup(), r -> runs(r).cooldown());
        }
    }

    private record Runs(RunResult warmup, RunResult cooldown) {}

    private static Runs runs(Rig rig) {
        return new Runs(
                Stored.answer(new WarmupQuestion(Stored.asked(rig))).run(),
                Stored.answer(new CooldownQuestion(Stored.asked(rig))).run());
    }

    private static void assertPlans(Rig rig) {
        assertPlans(rig, ThermalProbe::warmup, ThermalProbe::cooldown);
    }

    private static void assertPlans(Rig rig, Function<Rig, RunResult> warmup, Function<Rig, RunResult> cooldownOf) {
        WorkingFluid fluid = FluidLibrary.builtIn().find(rig.fluidId());
        CheckAnswer check = Stored.check(rig);
        RunResult cooldown = cooldownOf.apply(rig);
        boolean any = false;
        for (Variant variant : Variant.values()) {
            PlanAnswer answer;
            try {
                answer = Stored.answer(new PlanQuestion(Stored.asked(rig), variant));
            } catch (ComputationException e) {
                // the gas side refuses some rigs whose gas does not add up; whoever must stop has a plan nevertheless
                assertThat(rig.vacuum()).isPresent();
                assertThat(e.reason().key()).isEqualTo(MessageKey.GAS_NOT_CLOSED);
                assertThat(variant).isNotIn(Variant.QUICK_STOP, Variant.EMERGENCY);
                Statistics.label("gas adds up").collect(false);
                continue;
            }
            Statistics.label("gas adds up").collect(true);
            assertThat(answer.safe()).isEqualTo(answer.plan().isPresent());
            if (answer.plan().isEmpty()) {
                assertThat(answer.verdict()).startsWith("No safe plan.").hasSizeGreaterThan(30);
                continue;
            }
            any |= variant == Variant.NORMAL;
            new Referee(rig, fluid, answer.plan().get(), warmup, cooldown).check();
            if (variant == Variant.NORMAL) {
                assertValve(check, answer.plan().get());
            }
            assertThat(Stored.answer(new PlanRulesQuestion(
                                    Stored.asked(rig), answer.plan().get()))
                            .safe())
                    .isTrue();
        }
        Statistics.label("gas adds up").coverage(c -> c.check(true).percentage(p -> p >= 80));
        Statistics.label("plan from cold").collect(any);
    }

    /** The valve opens when roughing has come down to the crossover pressure in the gas side's own time line. */
    private static void assertValve(CheckAnswer check, Plan plan) {
        Optional<PlanStep> open = plan.steps().stream()
                .filter(s -> s.action() == Action.OPEN_VALVE)
                .findFirst();
        if (open.isEmpty() || check.rig().vacuum().isEmpty()) {
            return;
        }
        Crossover crossover = VacuumQuestion.of(check, Gas.AIR, TypicalValues.PUMPED_S, new CancelToken())
                .timeline()
                .crossover();
        double heats = check.warmup().events().stream()
                .filter(e -> e.kind() == EventKind.HEAT_ON)
                .mapToDouble(e -> e.timeS().orElseThrow())
                .findFirst()
                .orElseThrow();
        double heat = plan.steps().stream()
                .filter(s -> s.action() == Action.HEAT)
                .mapToDouble(s -> s.moment().atS())
                .findFirst()
                .orElseThrow();
        assertThat(open.get().moment().atS() - heat)
                .isGreaterThanOrEqualTo(crossover.timeS().orElseThrow() - heats);
    }

    /** Reads the rules off a plan and runs of its own. */
    private static final class Referee {
        private final Rig rig;
        private final WorkingFluid fluid;
        private final Plan plan;
        private final Function<Rig, RunResult> warmup;
        private final RunResult cooldown;

        Referee(Rig rig, WorkingFluid fluid, Plan plan, Function<Rig, RunResult> warmup, RunResult cooldown) {
            this.rig = rig;
            this.fluid = fluid;
            this.plan = plan;
            this.warmup = warmup;
            this.cooldown = cooldown;
        }

        void check() {
            order();
            if (!plan.variant().isFromHot()) {
                warmUp();
            }
            if (plan.variant() != Variant.STANDBY) {
                coolDown();
            }
        }

        private Optional<PlanStep> first(Action action) {
            return plan.steps().stream().filter(s -> s.action() == action).findFirst();
        }

        private int index(Action action) {
            return first(action).map(plan.steps()::indexOf).orElse(-1);
        }

        private void order() {
            for (int i = 1; i < plan.steps().size(); i++) {
                PlanStep before = plan.steps().get(i - 1);
                PlanStep step = plan.steps().get(i);
                if (before.moment().clock() == step.moment().clock()) {
                    assertThat(step.moment().atS())
                            .isGreaterThanOrEqualTo(before.moment().atS());
                }
            }
            if (!plan.variant().isFromHot()) {
                int heat = index(Action.HEAT);
                assertThat(index(Action.BACKING_ON)).isBetween(0, heat - 1);
                if (!rig.cooling().elements().isEmpty()) {
                    assertThat(index(Action.OPEN_OUTLET)).isBetween(0, heat - 1);
                    assertThat(index(Action.COOLING_ON)).isBetween(0, heat - 1);
                }
                if (rig.heatSource().isFlame()) {
                    assertThat(index(Action.AIR_ROOM)).isBetween(0, heat - 1);
                }
            }
            if (index(Action.VENT_CHAMBER) >= 0) {
                assertThat(index(Action.CLOSE_VALVE)).isBetween(0, index(Action.VENT_CHAMBER) - 1);
            }
        }

        private void warmUp() {
            double heatS = first(Action.HEAT).orElseThrow().moment().atS();
            double backingS = first(Action.BACKING_ON).orElseThrow().moment().atS();
            assertThat(heatS - backingS).isGreaterThanOrEqualTo(300);
            RunResult run = warmup.apply(rig.withSchedule(schedule(heatS)));
            OptionalDouble full = run.events().stream()
                    .filter(e -> e.kind() == EventKind.FULL_PUMPING)
                    .map(TimeEvent::timeS)
                    .findFirst()
                    .orElseThrow();
            assertThat(full).isPresent();
            first(Action.OPEN_VALVE)
                    .ifPresent(open -> assertThat(open.moment().atS())
                            .isGreaterThanOrEqualTo(heatS + full.getAsDouble() - SAME_S));
            assertThat(highest(run, SeriesQuantity.FORELINE).orElse(0)).isLessThanOrEqualTo(66.5 * 1.001);
            OptionalDouble limit =
                    rig.limits().oilBulkK().isPresent() ? rig.limits().oilBulkK() : fluid.bulkLimit();
            limit.ifPresent(k -> assertThat(
                            highest(run, SeriesQuantity.LIQUID_TEMPERATURE).orElseThrow())
                    .isLessThanOrEqualTo(k + SAME_K));
        }

        /** The plan's own heat, from the moment it goes on. */
        private Schedule schedule(double heatS) {
            List<Schedule.Step> steps = new ArrayList<>();
            for (PlanStep step : plan.steps()) {
                if (step.moment().clock() == Clock.FROM_COLD && step.action() == Action.HEAT) {
                    double at = step.moment().atS() - heatS;
                    steps.add(
                            step.level().holdOilK().isPresent()
                                    ? new Schedule.HoldOil(
                                            at, step.level().holdOilK().getAsDouble())
                                    : new Schedule.Power(at, step.level().fraction()));
                }
            }
            return new Schedule(steps);
        }

        private static OptionalDouble highest(RunResult run, SeriesQuantity quantity) {
            return run.series().find(quantity).stream()
                    .flatMapToDouble(c -> java.util.Arrays.stream(c.values()))
                    .max();
        }

        private void coolDown() {
            double off = hot(Action.HEAT_OFF).orElseThrow();
            assertThat(off).isZero();
            hot(Action.CLOSE_VALVE)
                    .ifPresent(shut -> cooldown.events().stream()
                            .filter(e ->
                                    e.kind() == EventKind.JET_LOST && e.timeS().isPresent())
                            .forEach(e -> assertThat(shut).isLessThan(e.timeS().getAsDouble())));
            for (Action action : List.of(Action.COOLING_OFF, Action.BACKING_OFF)) {
                hot(action).ifPresent(t -> assertThat(oilK(t)).as(action.id()).isLessThanOrEqualTo(333.15 + SAME_K));
            }
            hot(Action.LET_AIR_IN)
                    .ifPresent(t -> assertThat(oilK(t))
                            .isLessThanOrEqualTo(fluid.airAdmissionLimit().orElseThrow() + SAME_K));
        }

        private Optional<Double> hot(Action action) {
            return plan.steps().stream()
                    .filter(s -> s.action() == action && s.moment().clock() == Clock.FROM_HOT)
                    .map(s -> s.moment().atS())
                    .findFirst();
        }

        private double oilK(double t) {
            double[] time = cooldown.series().column(SeriesQuantity.TIME).values();
            double[] oil =
                    cooldown.series().column(SeriesQuantity.LIQUID_TEMPERATURE).values();
            int i = 0;
            while (i < time.length - 1 && time[i] < t) {
                i++;
            }
            return oil[i];
        }
    }
}
