package boilwright.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is on from when to when in a plan, for time lines. */
public final class SwitchSpans {
    private SwitchSpans() {}

    /** What can be on. */
    public enum Switch {
        BACKING(SequenceText.SWITCH_BACKING, Action.BACKING_ON, Action.BACKING_OFF),
        COOLING(SequenceText.SWITCH_COOLING, Action.COOLING_ON, Action.COOLING_OFF),
        HEAT(SequenceText.SWITCH_HEAT, Action.HEAT, Action.HEAT_OFF),
        VALVE(SequenceText.SWITCH_VALVE, Action.OPEN_VALVE, Action.CLOSE_VALVE);

        private final SequenceText title;
        private final Action on;
        private final Action off;

        Switch(SequenceText title, Action on, Action off) {
            this.title = title;
            this.on = on;
            this.off = off;
        }

        /** What people read. */
        public String title() {
            return title.say();
        }

        private boolean isIn(List<PlanStep> steps) {
            return steps.stream().anyMatch(s -> s.action() == on || s.action() == off);
        }
    }

    /**
     * A stretch of time in which something is on.
     *
     * @param what what
     * @param clock the clock of its times
     * @param fromS when it goes on, s
     * @param toS when it goes off, s; infinity when that is not on this clock
     */
    public record Span(Switch what, Clock clock, double fromS, double toS) {}

    /** The switches that a plan names, in the order in which a time line has them. */
    public static List<Switch> switches(List<PlanStep> steps) {
        return Arrays.stream(Switch.values()).filter(s -> s.isIn(steps)).toList();
    }

    /** The clocks of a plan, in the order in which they run. */
    public static List<Clock> clocks(List<PlanStep> steps) {
        return steps.stream().map(s -> s.moment().clock()).distinct().toList();
    }

    /** Every stretch, by switch and then by time. */
    public static List<Span> of(Variant variant, List<PlanStep> steps) {
        List<Span> spans = new ArrayList<>();
        for (Switch what : switches(steps)) {
            boolean opensLater = steps.stream().anyMatch(s -> s.action() == Action.OPEN_VALVE);
            boolean on = variant.isFromHot() || (what == Switch.VALVE && !opensLater);
            for (Clock clock : clocks(steps)) {
                on = add(spans, what, clock, steps, on);
            }
        }
        return spans;
    }

    private static boolean add(List<Span> spans, Switch what, Clock clock, List<PlanStep> steps, boolean before) {
        boolean on = before;
        double since = 0;
        for (PlanStep step : steps) {
            if (step.moment().clock() != clock) {
                continue;
            }
            double now = step.moment().atS();
            boolean next = on
                    ? step.action() != what.off
                    : step.action() == what.on
                            && (what != Switch.HEAT || step.level().isOn());
            if (next != on) {
                if (on && now > since) {
                    spans.add(new Span(what, clock, since, now));
                }
                since = now;
                on = next;
            }
        }
        if (on) {
            spans.add(new Span(what, clock, since, Double.POSITIVE_INFINITY));
        }
        return on;
    }
}
