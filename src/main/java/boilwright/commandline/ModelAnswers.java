package boilwright.commandline;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Questions;
import boilwright.answers.RunAnswer;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumQuestion;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterQuestion;
import boilwright.drill.DrillQuestion;
import boilwright.drill.DrillSet;
import boilwright.estimate.GuessRanking;
import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.RankedGuess;
import boilwright.estimate.RigEstimate;
import boilwright.estimate.RigEstimator;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanQuestion;
import boilwright.sequence.Variant;
import boilwright.spread.Spread;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadPlan;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The answers that the model gives. */
enum ModelAnswers implements AnswerSource {
    INSTANCE;

    @Override
    public CheckAnswer check(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.check(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public CheckAnswer checkRankingGuesses(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.checkRankingGuesses(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public RunAnswer warmup(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.warmup(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public RunAnswer cooldown(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return Questions.cooldown(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public DrillSet drills(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            List<Fault> faults,
            OptionalDouble atS,
            double lateS,
            CancelToken cancel,
            ProgressSink progress) {
        CheckAnswer check = Questions.check(rig, fluid, dataVersion, cancel, progress);
        return DrillQuestion.ask(check, fluid, faults, atS, lateS, cancel, progress);
    }

    @Override
    public WaterAnswer water(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            double sessionS,
            CancelToken cancel,
            ProgressSink progress) {
        return WaterQuestion.ask(rig, fluid, dataVersion, sessionS, cancel, progress);
    }

    @Override
    public VacuumAnswer vacuum(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            Gas gas,
            double lookS,
            CancelToken cancel,
            ProgressSink progress) {
        return VacuumQuestion.ask(rig, fluid, dataVersion, gas, lookS, cancel, progress);
    }

    @Override
    public SpreadAnswer spread(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            SpreadPlan plan,
            CancelToken cancel,
            ProgressSink progress) {
        return Spread.run(rig, fluid, dataVersion, plan, cancel, progress);
    }

    @Override
    public PlanAnswer plan(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            Variant variant,
            CancelToken cancel,
            ProgressSink progress) {
        return PlanQuestion.ask(rig, fluid, dataVersion, variant, cancel, progress);
    }

    @Override
    public PlanAnswer checkPlan(
            Rig rig, WorkingFluid fluid, String dataVersion, Plan plan, CancelToken cancel, ProgressSink progress) {
        return PlanQuestion.holdAgainstRules(
                Questions.check(rig, fluid, dataVersion, cancel, progress), fluid, plan, cancel);
    }

    @Override
    public RigEstimate estimate(OutsideMeasurements measured, WorkingFluid fluid, Set<String> acceptedFields) {
        return RigEstimator.estimate(measured, fluid, acceptedFields);
    }

    @Override
    public List<RankedGuess> rank(Rig rig, WorkingFluid fluid, CancelToken cancel, ProgressSink progress) {
        return GuessRanking.of(rig, fluid, cancel, progress);
    }
}
