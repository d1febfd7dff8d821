package boilwright.commandline;

import boilwright.answers.CheckAnswer;
import boilwright.answers.RunAnswer;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.WaterAnswer;
import boilwright.drill.DrillSet;
import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.RankedGuess;
import boilwright.estimate.RigEstimate;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.Variant;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadPlan;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** Who answers the questions of the commands: the model, or in tests someone who misbehaves on purpose. */
interface AnswerSource {
    CheckAnswer check(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    CheckAnswer checkRankingGuesses(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    RunAnswer warmup(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    RunAnswer cooldown(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress);

    DrillSet drills(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            List<Fault> faults,
            OptionalDouble atS,
            double lateS,
            CancelToken cancel,
            ProgressSink progress);

    WaterAnswer water(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            double sessionS,
            CancelToken cancel,
            ProgressSink progress);

    VacuumAnswer vacuum(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            Gas gas,
            double lookS,
            CancelToken cancel,
            ProgressSink progress);

    SpreadAnswer spread(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            SpreadPlan plan,
            CancelToken cancel,
            ProgressSink progress);

    PlanAnswer plan(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            Variant variant,
            CancelToken cancel,
            ProgressSink progress);

    PlanAnswer checkPlan(
            Rig rig, WorkingFluid fluid, String dataVersion, Plan plan, CancelToken cancel, ProgressSink progress);

    RigEstimate estimate(OutsideMeasurements measured, WorkingFluid fluid, Set<String> acceptedFields);

    List<RankedGuess> rank(Rig rig, WorkingFluid fluid, CancelToken cancel, ProgressSink progress);
}
