package boilwright.sequence;

import java.util.List;

/**
 * What to do in which order.
 *
 * @param variant what the plan is for
 * @param steps in the order in which they are done; at least one
 */
public record Plan(Variant variant, List<PlanStep> steps) {
    public Plan {
        steps = List.copyOf(steps);
    }
}
