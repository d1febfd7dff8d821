package boilwright.sequence;

import boilwright.answers.Say;
import boilwright.rig.Schedule;
import boilwright.sequence.RuleFinding.Status;
import boilwright.thermal.EventKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Makes a plan from the rig's simulated run, or takes a given one, and holds it against the rules; for one plan. */
final class ProvenPlan {
    /** Tries to find how long a fresh charge is heated gently. */
    private static final int MOST_TRIES = 3;
    /** Shortest gentle heating of a fresh charge, s; engineering judgement. */
    private static final double GENTLE_LEAST_S = 600;

    private final PlanRuns runs;
    private final Variant variant;
    private final List<String> notes = new ArrayList<>();

    ProvenPlan(PlanRuns runs, Variant variant) {
        this.runs = runs;
        this.variant = variant;
    }

    /**
     * The plan for a rig. Where its own heat breaks only what gentler heat may keep, others are tried: half of it until the oil is
     * degassed, where the foreline stands against it; that which is held once hot from the beginning, where a limit does.
     */
    PlanAnswer generate(SimulatedRun own) {
        Optional<String> obstacle = PlanMaker.obstacle(variant, own);
        if (obstacle.isPresent()) {
            return none(own, obstacle.get(), List.of(), List.of());
        }
        if (variant.isFromHot()) {
            return judged(own);
        }
        PlanAnswer first = variant == Variant.FIRST
                ? judged(gentle(own, own.rig().schedule()))
                : judged(own.withGap(PlanMaker.gapS(own, false)));
        if (first.safe()) {
            return first;
        }
        if (variant == Variant.NORMAL && breaks(first, Rule.FORELINE_WITH_HEAT)) {
            PlanAnswer gentle = judged(gentle(own, own.rig().schedule()));
            if (gentle.safe()) {
                return noted(gentle, SequenceText.NOTE_GENTLE);
            }
        }
        if (first.findings().stream().anyMatch(f -> f.status() == Status.BROKEN)) {
            Schedule held = HeatChange.withoutBoost(own.rig().schedule());
            SimulatedRun milder = runs.heatedBy(own, held);
            PlanAnswer answer = variant == Variant.FIRST || breaks(first, Rule.FORELINE_WITH_HEAT)
                    ? judged(gentle(milder, held))
                    : judged(milder.withGap(PlanMaker.gapS(milder, false)));
            if (answer.safe()) {
                return noted(answer, SequenceText.NOTE_WITHOUT_BOOST);
            }
        }
        return first;
    }

    private static boolean breaks(PlanAnswer answer, Rule rule) {
        return answer.findings().stream().anyMatch(f -> f.rule() == rule && f.status() == Status.BROKEN);
    }

    private PlanAnswer noted(PlanAnswer answer, SequenceText note) {
        return answer.withNote(note.say());
    }

    /** The run with half the power until the oil is degassed. */
    private SimulatedRun gentle(SimulatedRun own, Schedule schedule) {
        double begin = schedule.heatOnS();
        double gentleS = GENTLE_LEAST_S;
        SimulatedRun run = own;
        for (int i = 0; i < MOST_TRIES; i++) {
            run = runs.heatedBy(own, HeatChange.gentle(schedule, gentleS));
            OptionalDouble degassed = run.upS(EventKind.DEGASSED, "");
            double needed = degassed.isPresent() ? StepList.up(degassed.getAsDouble() - run.zeroS() - begin) : 0;
            if (needed <= gentleS) {
                break;
            }
            gentleS = needed;
        }
        return run.withGap(PlanMaker.gapS(run, true));
    }

    /** The plan for a run with its proof. */
    private PlanAnswer judged(SimulatedRun run) {
        notes.clear();
        Optional<String> obstacle = PlanMaker.obstacle(variant, run);
        if (obstacle.isPresent()) {
            return none(run, obstacle.get(), List.of(), List.of());
        }
        Plan plan = PlanMaker.make(variant, run);
        List<RuleFinding> findings = PlanChecker.check(plan, run);
        if (PlanChecker.isSafe(findings)) {
            notes(run);
            return answer(run, false, Optional.of(plan), true, PlanMaker.verdict(variant, run, findings), findings);
        }
        List<RuleFinding> broken =
                findings.stream().filter(f -> f.status() == Status.BROKEN).toList();
        String reasons = broken.stream().map(RuleFinding::sentence).collect(Collectors.joining(" "));
        return none(run, reasons, findings, upToBreak(plan, broken));
    }

    private void notes(SimulatedRun run) {
        if (!variant.isFromHot() && run.zeroS() > run.pumpDownS()) {
            notes.add(SequenceText.NOTE_WAIT.say(
                    Say.time(run.upS(EventKind.HEAT_ON, "").orElseThrow())));
        }
        if (variant == Variant.STANDBY) {
            OptionalDouble full = run.upS(EventKind.FULL_PUMPING, "");
            full.ifPresent(t -> notes.add(SequenceText.NOTE_PAUSE.say(
                    Say.time(t + run.downS(EventKind.JETS_GONE).orElse(0)))));
        }
        notes.add(SequenceText.NOTE_OVERDUE.say());
    }

    /** What the rules say of a given plan. */
    PlanAnswer edited(SimulatedRun own, Plan plan) {
        SimulatedRun run = followed(own, plan);
        List<RuleFinding> findings = PlanChecker.check(plan, run);
        boolean safe = PlanChecker.isSafe(findings);
        List<RuleFinding> broken =
                findings.stream().filter(f -> f.status() == Status.BROKEN).toList();
        String verdict = safe
                ? SequenceText.VERDICT_EDITED_SAFE.say(PlanChecker.tested(findings))
                : SequenceText.VERDICT_EDITED_BROKEN.say(
                        Long.toString(broken.stream()
                                .map(RuleFinding::rule)
                                .distinct()
                                .count()),
                        broken.stream().map(RuleFinding::sentence).collect(Collectors.joining(" ")));
        return answer(run, true, Optional.of(plan), safe, verdict, findings);
    }

    /** The run that a plan leads to: the rig's own when it heats alike, else a new one with the plan's heat. */
    private SimulatedRun followed(SimulatedRun own, Plan plan) {
        if (plan.variant().isFromHot()) {
            return own;
        }
        double backing = plan.steps().stream()
                .filter(s -> s.action() == Action.BACKING_ON)
                .mapToDouble(s -> s.moment().atS())
                .findFirst()
                .orElse(0);
        OptionalDouble heat = plan.steps().stream()
                .filter(s -> s.action() == Action.HEAT && s.level().isOn())
                .mapToDouble(s -> s.moment().atS())
                .findFirst();
        double ownHeat = own.rig().schedule().heatOnS();
        double gap = heat.isPresent() ? Math.max(0, heat.getAsDouble() - backing - own.pumpDownS() - ownHeat) : 0;
        List<Schedule.Step> steps = HeatChange.of(plan, backing + own.pumpDownS() + gap);
        if (steps.isEmpty() || HeatChange.same(steps, own.rig().schedule().steps())) {
            return own.withGap(gap);
        }
        notes.add(SequenceText.NOTE_EDITED_RUN.say());
        return runs.anew(own, new Schedule(steps)).withGap(gap);
    }

    /** The steps that come before the first breach: how far one would get. */
    private static List<PlanStep> upToBreak(Plan plan, List<RuleFinding> broken) {
        Optional<Moment> first =
                broken.stream().flatMap(f -> f.moment().stream()).min(Moment.ORDER);
        return first.isEmpty()
                ? List.of()
                : plan.steps().stream()
                        .takeWhile(step -> Moment.ORDER.compare(step.moment(), first.get()) <= 0)
                        .toList();
    }

    private PlanAnswer none(SimulatedRun run, String reason, List<RuleFinding> findings, List<PlanStep> upToBreak) {
        return answer(run, false, Optional.empty(), false, SequenceText.VERDICT_NONE.say(reason), findings, upToBreak);
    }

    private PlanAnswer answer(
            SimulatedRun run,
            boolean edited,
            Optional<Plan> plan,
            boolean safe,
            String verdict,
            List<RuleFinding> findings) {
        return answer(run, edited, plan, safe, verdict, findings, List.of());
    }

    private PlanAnswer answer(
            SimulatedRun run,
            boolean edited,
            Optional<Plan> plan,
            boolean safe,
            String verdict,
            List<RuleFinding> findings,
            List<PlanStep> upToBreak) {
        PlanWords words = new PlanWords(run);
        List<String> all = new ArrayList<>(notes);
        all.add(SequenceText.NOTE_TIMES.say());
        return new PlanAnswer(
                run.check(),
                run.cooldown(),
                variant,
                edited,
                plan,
                upToBreak,
                safe,
                verdict,
                findings,
                words.limits(variant),
                words.emergency(),
                words.unproven(),
                words.cautions(),
                all);
    }
}
