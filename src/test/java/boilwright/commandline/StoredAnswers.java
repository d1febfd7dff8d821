package boilwright.commandline;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Margin;
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
import boilwright.report.Samples;
import boilwright.rig.Rig;
import boilwright.sequence.Plan;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.Variant;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadPlan;
import boilwright.thermal.Fault;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Gives the same answers to every rig, or fails in a given way, so that the commands can be tested without the model. */
final class StoredAnswers implements AnswerSource {
    private final Margin.Status heat;
    private final Throwable fault;
    private int asked;
    private CancelToken stopped = new CancelToken();
    private double stopAt = Double.POSITIVE_INFINITY;

    private StoredAnswers(Margin.Status heat, Throwable fault) {
        this.heat = heat;
        this.fault = fault;
    }

    /** Answers in which the heat margin has this status. */
    static StoredAnswers with(Margin.Status heat) {
        return new StoredAnswers(heat, null);
    }

    /** No answers: this is thrown. */
    static StoredAnswers failing(Throwable fault) {
        return new StoredAnswers(Margin.Status.HOLDS, fault);
    }

    /** Has this token raised when an uncertainty run has come this far. */
    StoredAnswers stopping(CancelToken cancel, double share) {
        stopped = cancel;
        stopAt = share;
        return this;
    }

    /** How many questions were asked. */
    int asked() {
        return asked;
    }

    @Override
    public CheckAnswer check(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        ask();
        return Samples.check(heat);
    }

    @Override
    public CheckAnswer checkRankingGuesses(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        return check(rig, fluid, dataVersion, cancel, progress);
    }

    @Override
    public RunAnswer warmup(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        ask();
        return Samples.runAnswer("warmup", heat);
    }

    @Override
    public RunAnswer cooldown(
            Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        ask();
        return Samples.runAnswer("cooldown", heat);
    }

    /** Only a rig that is measured through and through: no guesses. */
    @Override
    public WaterAnswer water(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            double sessionS,
            CancelToken cancel,
            ProgressSink progress) {
        ask();
        return ModelAnswers.INSTANCE.water(rig, fluid, dataVersion, sessionS, cancel, progress);
    }

    @Override
    public PlanAnswer plan(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            Variant variant,
            CancelToken cancel,
            ProgressSink progress) {
        ask();
        return ModelAnswers.INSTANCE.plan(rig, fluid, dataVersion, variant, cancel, progress);
    }

    @Override
    public PlanAnswer checkPlan(
            Rig rig, WorkingFluid fluid, String dataVersion, Plan plan, CancelToken cancel, ProgressSink progress) {
        ask();
        return ModelAnswers.INSTANCE.checkPlan(rig, fluid, dataVersion, plan, cancel, progress);
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
        ask();
        return ModelAnswers.INSTANCE.drills(rig, fluid, dataVersion, faults, atS, lateS, cancel, progress);
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
        ask();
        return ModelAnswers.INSTANCE.vacuum(rig, fluid, dataVersion, gas, lookS, cancel, progress);
    }

    @Override
    public SpreadAnswer spread(
            Rig rig,
            WorkingFluid fluid,
            String dataVersion,
            SpreadPlan plan,
            CancelToken cancel,
            ProgressSink progress) {
        ask();
        return ModelAnswers.INSTANCE.spread(rig, fluid, dataVersion, plan, cancel, (share, phase) -> {
            progress.progress(share, phase);
            if (share >= stopAt) {
                stopped.cancel();
            }
        });
    }

    @Override
    public RigEstimate estimate(OutsideMeasurements measured, WorkingFluid fluid, Set<String> acceptedFields) {
        ask();
        return new RigEstimate(Samples.check(heat).rig(), List.of(), Optional.empty(), List.of());
    }

    @Override
    public List<RankedGuess> rank(Rig rig, WorkingFluid fluid, CancelToken cancel, ProgressSink progress) {
        return List.of();
    }

    private void ask() {
        asked++;
        if (fault instanceof RuntimeException exception) {
            throw exception;
        }
        if (fault instanceof Error error) {
            throw error;
        }
    }
}
