package boilwright.report;

import boilwright.sequence.Clock;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import boilwright.spread.Bands;
import boilwright.spread.Bands.EventBand;
import boilwright.spread.EventKey;
import boilwright.spread.Percent;
import boilwright.thermal.EventKind;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts beside the looks of a start how far their times spread. The stop's times are not sampled. */
public final class PlanBands {
    private PlanBands() {}

    /**
     * The same answer with bands in the words of its steps.
     *
     * @param answer the plan
     * @param bands of the warm-up of the rig that the plan was held against; may be empty
     */
    public static PlanAnswer with(PlanAnswer answer, Bands bands) {
        if (bands.isEmpty() || answer.plan().isEmpty()) {
            return answer;
        }
        Plan plan = answer.plan().get();
        List<PlanStep> steps =
                plan.steps().stream().map(step -> step(answer, step, bands)).toList();
        List<String> notes = new ArrayList<>(answer.notes());
        notes.add(
                "Times in brackets hold for 10 to 90 % of " + bands.samples()
                        + " samples of what is uncertain, with the heat set at the plan's own times; those of the stop are not sampled.");
        return new PlanAnswer(
                answer.check(),
                answer.cooldown(),
                answer.variant(),
                answer.edited(),
                Optional.of(new Plan(plan.variant(), steps)),
                answer.upToBreak(),
                answer.safe(),
                answer.verdict(),
                answer.findings(),
                answer.limits(),
                answer.emergency(),
                answer.unproven(),
                answer.cautions(),
                notes);
    }

    private static PlanStep step(PlanAnswer answer, PlanStep step, Bands bands) {
        if (step.moment().clock() != Clock.FROM_COLD) {
            return step;
        }
        Optional<EventBand> found = band(answer, step, bands);
        if (found.isEmpty()) {
            return step;
        }
        PlanStep.Words words = step.words();
        double from = answer.runStartsS();
        if (found.get().never().cases() > 0) {
            // a time that may never come has a chance, no band
            return withHold(
                    step,
                    (step.words().hold() + " (comes in "
                                    + Percent.of(1 - found.get().never().share()) + " of the samples)")
                            .strip());
        }
        String low = late(found.get().timeS().low().orElse(Double.POSITIVE_INFINITY) + from);
        String high = late(found.get().timeS().high().orElse(Double.POSITIVE_INFINITY) + from);
        return withHold(step, (words.hold() + " (" + low + " to " + high + ")").strip());
    }

    private static PlanStep withHold(PlanStep step, String hold) {
        PlanStep.Words words = step.words();
        return new PlanStep(
                step.action(),
                step.moment(),
                step.level(),
                step.latestS(),
                new PlanStep.Words(words.what(), hold, words.otherwise(), words.why(), words.caution()));
    }

    private static String late(double seconds) {
        return seconds < Double.POSITIVE_INFINITY ? EventWords.clock(seconds) : "never";
    }

    private static Optional<EventBand> band(PlanAnswer answer, PlanStep step, Bands bands) {
        List<TimeEvent> events = answer.check().warmup().events();
        List<EventKey> keys = EventKey.of(events);
        String top = answer.check()
                .rig()
                .stages()
                .get(answer.check().rig().stages().size() - 1)
                .name();
        for (int i = 0; i < events.size(); i++) {
            TimeEvent event = events.get(i);
            boolean meant = switch (step.action()) {
                case LOOK_DEGASSED -> event.kind() == EventKind.DEGASSED;
                // the events stand in the order of their times
                case LOOK_FIRST_JET -> event.kind() == EventKind.JET_LIT;
                case LOOK_TOP_JET ->
                    event.kind() == EventKind.JET_LIT && event.stage().equals(top);
                case LOOK_FULL -> event.kind() == EventKind.FULL_PUMPING;
                default -> false;
            };
            if (meant) {
                return bands.event(keys.get(i));
            }
        }
        return Optional.empty();
    }
}
