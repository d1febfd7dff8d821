package boilwright.companion;

import boilwright.sequence.Moment;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What the first lines of a run log say of the whole run, so that a reader needs nothing else.
 *
 * @param begun when the log was begun
 * @param program version of the program
 * @param data version of the fluid data
 * @param rig the rig's title
 * @param fluid its fluid's title
 * @param variant name of the plan's variant
 * @param steps the plan
 */
public record LogHead(
        Instant begun, String program, String data, String rig, String fluid, String variant, List<PlannedStep> steps) {
    /** The format that is written, and the only one that is read so far. */
    public static final int FORMAT = 1;

    static final String TITLE = "Boilwright run log";

    public LogHead {
        steps = List.copyOf(steps);
    }

    /**
     * A step of the plan.
     *
     * @param action name of what is done or looked at
     * @param moment when, as computed
     * @param latestS when it is overdue on the same clock, s; empty for never
     * @param what what to do
     */
    public record PlannedStep(String action, Moment moment, OptionalDouble latestS, String what) {
        static PlannedStep of(PlanStep step) {
            String what = step.words().what();
            return new PlannedStep(
                    step.action().id(),
                    step.moment(),
                    step.latestS(),
                    what.isEmpty() ? step.action().id().replace('-', ' ') : what);
        }
    }

    /** The head for a plan; there must be one. */
    public static LogHead of(PlanAnswer answer, Instant now) {
        Plan plan = answer.plan().orElseThrow();
        return new LogHead(
                now,
                answer.check().programVersion(),
                answer.check().dataVersion(),
                answer.check().rig().name(),
                answer.check().fluidTitle(),
                plan.variant().id(),
                plan.steps().stream().map(PlannedStep::of).toList());
    }

    /** Whether a log with this head is one of a plan: rig, variant and the steps in their order. */
    boolean suits(LogHead other) {
        return rig.equals(other.rig)
                && variant.equals(other.variant)
                && actions().equals(other.actions());
    }

    private List<String> actions() {
        return steps.stream()
                .map(s -> s.moment().clock().id() + " " + s.action())
                .toList();
    }

    /** Rig and variant, for a sentence. */
    String inWords() {
        return rig + ", " + variant + ", " + steps.size() + " steps";
    }

    /** The lines of the head, after the names of the columns. */
    List<LogEntry> entries() {
        List<LogEntry> list = new ArrayList<>();
        list.add(begin("format", TITLE).with(FORMAT, "1"));
        list.add(begin("program", program));
        list.add(begin("fluid-data", data));
        list.add(begin("rig", rig));
        list.add(begin("fluid", fluid));
        list.add(begin("variant", variant));
        list.add(begin("steps", "").with(steps.size(), "1"));
        for (int i = 0; i < steps.size(); i++) {
            PlannedStep step = steps.get(i);
            LogEntry entry = LogEntry.of(begun, LogKind.PLAN, step.action(), step.what())
                    .on(step.moment().clock(), step.moment().atS())
                    .ofStep(i + 1);
            list.add(step.latestS().isPresent() ? entry.with(step.latestS().getAsDouble(), "s") : entry);
        }
        return list;
    }

    private LogEntry begin(String quantity, String text) {
        return LogEntry.of(begun, LogKind.BEGIN, quantity, text);
    }
}
