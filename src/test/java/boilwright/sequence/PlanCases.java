package boilwright.sequence;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Stored;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigReader;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/** Plans of rigs for tests, and the same plans with one thing changed. */
public final class PlanCases {
    /** A rig whose oil bears a hot wall, for what has nothing to do with that limit. */
    public static Rig bearingHotWalls(Rig rig) {
        return RigEdit.of("limits.oilFilm", 720).applied(rig);
    }

    private PlanCases() {}

    /** A demo rig. */
    public static Rig demo(String name) {
        return RigReader.readDemo(name, Stored.FLUIDS.workingFluids(), Set.of());
    }

    /** The fluid of a rig. */
    public static WorkingFluid fluid(Rig rig) {
        return Stored.FLUIDS.find(rig.fluidId());
    }

    /** The check of a rig, made once. */
    public static CheckAnswer check(Rig rig) {
        return Stored.check(rig);
    }

    /** The plan of a rig. */
    public static PlanAnswer plan(Rig rig, Variant variant) {
        return Stored.answer(new PlanQuestion(Stored.asked(rig), variant));
    }

    /** What the rules say of a plan that somebody changed. */
    public static PlanAnswer held(Rig rig, Plan plan) {
        return Stored.answer(new PlanRulesQuestion(Stored.asked(rig), plan));
    }

    /** A step without words and without a limit, as somebody may write it into a plan by hand. */
    static PlanStep step(Action action, Moment moment) {
        return new PlanStep(action, moment, HeatLevel.OFF, OptionalDouble.empty(), PlanStep.Words.NONE);
    }

    /** The plan without some steps. */
    static Plan without(Plan plan, Action action) {
        return new Plan(
                plan.variant(),
                plan.steps().stream().filter(s -> s.action() != action).toList());
    }

    /** The plan with some steps at another time, in their place in the list. */
    static Plan retimed(Plan plan, Predicate<PlanStep> which, UnaryOperator<Moment> when) {
        return new Plan(
                plan.variant(),
                plan.steps().stream()
                        .map(s -> which.test(s)
                                ? new PlanStep(s.action(), when.apply(s.moment()), s.level(), s.latestS(), s.words())
                                : s)
                        .toList());
    }

    /** The plan with one step taken out and put right behind the first step of another kind. */
    static Plan moved(Plan plan, Action action, Action behind) {
        PlanStep moved = step(plan, action);
        List<PlanStep> steps = new ArrayList<>(plan.steps());
        steps.remove(moved);
        steps.add(steps.indexOf(step(plan, behind)) + 1, moved);
        return new Plan(plan.variant(), steps);
    }

    /** The first step of a kind. */
    static PlanStep step(Plan plan, Action action) {
        return plan.steps().stream()
                .filter(s -> s.action() == action)
                .findFirst()
                .orElseThrow();
    }

    /** The first breach of a rule. */
    static RuleFinding breach(PlanAnswer answer, Rule rule) {
        return answer.findings().stream()
                .filter(f -> f.rule() == rule && f.status() == RuleFinding.Status.BROKEN)
                .findFirst()
                .orElseThrow(() -> new AssertionError(rule + " is not broken: " + answer.findings()));
    }
}
