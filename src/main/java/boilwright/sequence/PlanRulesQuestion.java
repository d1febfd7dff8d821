package boilwright.sequence;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/**
 * Does a plan that somebody wrote or changed keep the rules? Where it heats otherwise than the rig's schedule the rig is run anew with
 * the plan's heat.
 *
 * @param asked the rig
 * @param plan the plan
 */
public record PlanRulesQuestion(Asked asked, Plan plan) implements Question<PlanAnswer> {
    @Override
    public PlanAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        PlanRuns runs = new PlanRuns(model, cancel);
        return new ProvenPlan(runs, plan.variant()).edited(runs.of(asked, progress), plan);
    }
}
