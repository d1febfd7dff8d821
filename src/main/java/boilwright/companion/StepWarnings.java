package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import boilwright.sequence.Rule;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands against doing a step now: steps before it that were not done, and readings that say otherwise. */
final class StepWarnings {
    private final List<PlanStep> steps;
    private final List<PlanLimit> limits;

    StepWarnings(PlanAnswer answer) {
        steps = answer.plan().orElseThrow().steps();
        limits = answer.limits();
    }

    /** Numbers of the steps of the same clock that come before a step, were not done and matter. */
    List<Integer> skipped(int number, RunState state) {
        List<Integer> skipped = new ArrayList<>();
        PlanStep step = steps.get(number - 1);
        for (int i = 1; i < number; i++) {
            PlanStep before = steps.get(i - 1);
            boolean matters = before.isHold() || served(before.action()).isPresent();
            if (before.moment().clock() == step.moment().clock() && matters && !state.isDone(i)) {
                skipped.add(i);
            }
        }
        return skipped;
    }

    /** Whole sentences; none when nothing stands against the step. */
    List<String> against(int number, RunState state) {
        List<String> sentences = new ArrayList<>();
        for (int before : skipped(number, state)) {
            PlanStep step = steps.get(before - 1);
            String hold = step.words().hold();
            String wanted = hold.isEmpty() ? LogHead.PlannedStep.of(step).what() : hold;
            Optional<Rule> rule = served(step.action());
            sentences.add(
                    rule.isPresent()
                            ? CompanionText.WARN_SKIPPED_RULE.say(
                                    Integer.toString(before), wanted, rule.get().sentence())
                            : CompanionText.WARN_SKIPPED.say(Integer.toString(before), wanted));
        }
        readingAgainst(steps.get(number - 1).action(), state).ifPresent(sentences::add);
        return sentences;
    }

    private Optional<String> readingAgainst(Action action, RunState state) {
        return switch (action) {
            case HEAT -> past(ReadingKind.FORELINE, "foreline", Rule.FORELINE_WITH_HEAT, state);
            case OPEN_VALVE -> past(ReadingKind.CHAMBER, "crossover", Rule.VALVE_BELOW_CROSSOVER, state);
            case LOOK_COLD, COOLING_OFF -> past(ReadingKind.BOILER, "leave", Rule.WATER_UNTIL_COLD, state);
            case BACKING_OFF -> past(ReadingKind.BOILER, "leave", Rule.BACKING_UNTIL_COLD, state);
            case LET_AIR_IN -> past(ReadingKind.BOILER, "air", Rule.AIR_ON_COLD_OIL, state);
            default -> Optional.empty();
        };
    }

    private Optional<String> past(ReadingKind kind, String limit, Rule rule, RunState state) {
        return limits.stream()
                .filter(l -> l.id().equals(limit))
                .findFirst()
                .flatMap(l -> state.lastReading(kind)
                        .map(reading -> reading.value().orElseThrow())
                        .filter(value -> value > l.value())
                        .map(value -> CompanionText.WARN_READING.say(
                                kind.title(),
                                QuantityWriter.writeAuto(value, l.dimension()),
                                l.inWords(),
                                rule.sentence())));
    }

    /** The rule that nobody can be sure of when the step was not done; empty when none hangs on it. */
    static Optional<Rule> served(Action action) {
        return Optional.ofNullable(
                switch (action) {
                    case AIR_ROOM -> Rule.AIR_FOR_FLAME;
                    case BACKING_ON -> Rule.BACKING_BEFORE_HEAT;
                    case OPEN_OUTLET -> Rule.OUTLET_OPEN;
                    case COOLING_ON -> Rule.WATER_WITH_HEAT;
                    case LOOK_FORELINE, LOOK_DEGASSED -> Rule.FORELINE_WITH_HEAT;
                    case FILL, LOOK_FIRST_JET -> Rule.HEAT_WITHIN_LIMITS;
                    case LOOK_TOP_JET, LOOK_FULL, CLOSE_VALVE -> Rule.VALVE_WITH_JETS;
                    case ROUGH_CHAMBER, OPEN_VALVE -> Rule.VALVE_BELOW_CROSSOVER;
                    case HEAT_OFF, KEEP, LOOK_JETS_GONE -> Rule.WATER_UNTIL_COLD;
                    case LOOK_COLD -> Rule.BACKING_UNTIL_COLD;
                    case VENT_CHAMBER, LET_AIR_IN -> Rule.AIR_ON_COLD_OIL;
                    case HEAT, RUN, COOLING_OFF, BACKING_OFF, LEAVE_SHUT, OPEN_PUMP -> null;
                });
    }
}
