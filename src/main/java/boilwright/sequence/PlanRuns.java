package boilwright.sequence;

import boilwright.answers.CheckAnswer;
import boilwright.answers.Questions;
import boilwright.answers.VacuumQuestion;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.rig.Schedule;
import boilwright.rig.TypicalValues;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;

/** The runs that a plan is held against. */
final class PlanRuns {

    private final WorkingFluid fluid;
    private final TabulatedFluid tables;
    private final CancelToken cancel;

    PlanRuns(WorkingFluid fluid, CancelToken cancel) {
        this.fluid = fluid;
        this.cancel = cancel;
        tables = Questions.tables(fluid);
    }

    /** The run of a rig that was checked. */
    SimulatedRun of(CheckAnswer check) {
        RunResult cooldown = RunSimulator.cooldown(check.rig(), tables, check.parameters(), cancel, ProgressSink.NONE);
        return new SimulatedRun(check, fluid, cooldown, gas(check), 0);
    }

    private GasRun gas(CheckAnswer check) {
        return new GasRun(() -> check.rig()
                .vacuum()
                .map(side -> VacuumQuestion.of(check, fluid, Gas.AIR, TypicalValues.PUMPED_S, cancel)));
    }

    /** The same rig warmed up along another schedule that ends with the same level; its rest and cool-down stay. */
    SimulatedRun heatedBy(SimulatedRun own, Schedule schedule) {
        CheckAnswer check = own.check();
        Rig rig = check.rig().withSchedule(schedule);
        RunResult warmup = RunSimulator.warmup(rig, tables, check.parameters(), cancel, ProgressSink.NONE);
        CheckAnswer other = new CheckAnswer(
                rig,
                check.fluidTitle(),
                check.parameters(),
                check.verdict(),
                check.steady(),
                check.needed(),
                warmup,
                check.margins(),
                check.cautions(),
                check.notes(),
                check.programVersion(),
                check.dataVersion());
        return new SimulatedRun(other, fluid, own.cooldown(), gas(other), 0);
    }

    /** The same rig checked anew with another schedule. */
    SimulatedRun anew(SimulatedRun own, Schedule schedule) {
        CheckAnswer check = own.check();
        return of(Questions.check(
                check.rig().withSchedule(schedule), fluid, check.dataVersion(), cancel, ProgressSink.NONE));
    }
}
