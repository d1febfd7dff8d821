package boilwright.sequence;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/**
 * In which order is this rig run?
 *
 * @param asked the rig
 * @param variant what the plan is for
 */
public record PlanQuestion(Asked asked, Variant variant) implements Question<PlanAnswer> {
    @Override
    public PlanAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        PlanRuns runs = new PlanRuns(model, cancel);
        return new ProvenPlan(runs, variant).generate(runs.of(asked, progress));
    }
}
