package boilwright.sequence;

import boilwright.answers.Asked;
import boilwright.answers.CheckAnswer;
import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.Model;
import boilwright.answers.VacuumQuestion;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Schedule;
import boilwright.rig.TypicalValues;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;

/** The runs that a plan is held against. */
final class PlanRuns {
    private final Model model;
    private final CancelToken cancel;

    PlanRuns(Model model, CancelToken cancel) {
        this.model = model;
        this.cancel = cancel;
    }

    /** The run of a rig. */
    SimulatedRun of(Asked asked, ProgressSink progress) {
        CheckAnswer check = model.answer(new CheckQuestion(asked), cancel, progress);
        RunResult cooldown = model.answer(new CooldownQuestion(asked), cancel, ProgressSink.NONE)
                .run();
        return new SimulatedRun(check, cooldown, gas(check), 0);
    }

    private SimulatedRun.GasRun gas(CheckAnswer check) {
        return new SimulatedRun.GasRun(() ->
                check.rig().vacuum().map(side -> VacuumQuestion.of(check, Gas.AIR, TypicalValues.PUMPED_S, cancel)));
    }

    /** The same rig warmed up along another schedule that ends with the same level; its rest and cool-down stay. */
    SimulatedRun heatedBy(SimulatedRun own, Schedule schedule) {
        Asked asked = own.check().asked();
        Asked other = asked.with(own.rig().withSchedule(schedule), asked.values());
        RunResult warmup = RunSimulator.warmup(other.rig(), other.tables(), other.values(), cancel, ProgressSink.NONE);
        CheckAnswer check = own.check().withWarmup(other, warmup);
        return new SimulatedRun(check, own.cooldown(), gas(check), 0);
    }

    /** The same rig checked anew with another schedule. */
    SimulatedRun anew(SimulatedRun own, Schedule schedule) {
        return of(own.check().asked().with(own.rig().withSchedule(schedule)), ProgressSink.NONE);
    }
}
