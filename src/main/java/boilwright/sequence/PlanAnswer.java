package boilwright.sequence;

import boilwright.answers.CheckAnswer;
import boilwright.thermal.EventKind;
import boilwright.thermal.RunResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan with the proof that it keeps the rules, or the reason why there is none.
 *
 * @param check the rig at rest and the warm-up that the plan was held against
 * @param cooldown the cool-down that it was held against
 * @param variant what it is for
 * @param edited whether the plan came from a file; then it is shown whether it is safe or not
 * @param plan the plan; empty when there is no safe one
 * @param upToBreak where there is no safe plan, the steps before the first breach; none where no plan could be made at all
 * @param safe whether it breaks no rule
 * @param verdict one or two sentences
 * @param findings breaches first, then every other rule
 * @param limits limits to keep an eye on
 * @param emergency what comes first when something fails, whole sentences
 * @param unproven what the plan can't promise, whole sentences
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 */
public record PlanAnswer(
        CheckAnswer check,
        RunResult cooldown,
        Variant variant,
        boolean edited,
        Optional<Plan> plan,
        List<PlanStep> upToBreak,
        boolean safe,
        String verdict,
        List<RuleFinding> findings,
        List<PlanLimit> limits,
        List<String> emergency,
        List<String> unproven,
        List<String> cautions,
        List<String> notes) {
    public PlanAnswer {
        upToBreak = List.copyOf(upToBreak);
        findings = List.copyOf(findings);
        limits = List.copyOf(limits);
        emergency = List.copyOf(emergency);
        unproven = List.copyOf(unproven);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The same with a note before the others. */
    PlanAnswer withNote(String note) {
        List<String> all = new ArrayList<>(notes);
        all.add(0, note);
        return new PlanAnswer(
                check, cooldown, variant, edited, plan, upToBreak, safe, verdict, findings, limits, emergency, unproven,
                cautions, all);
    }

    /** When the warm-up's time 0 comes on the clock from cold, s; 0 for a plan that turns no heat on from cold. */
    public double runStartsS() {
        double heatOnS = check.warmup().events().stream()
                .filter(e -> e.kind() == EventKind.HEAT_ON && e.timeS().isPresent())
                .mapToDouble(e -> e.timeS().getAsDouble())
                .findFirst()
                .orElse(0);
        return plan.stream()
                .flatMap(p -> p.steps().stream())
                .filter(s -> s.action() == Action.HEAT && s.moment().clock() == Clock.FROM_COLD)
                .mapToDouble(s -> s.moment().atS() - heatOnS)
                .findFirst()
                .orElse(0);
    }
}
