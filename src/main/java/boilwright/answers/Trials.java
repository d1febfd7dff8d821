package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The same questions as {@link Questions}, asked many times of one fluid with other values: margins and events without verdict, cautions
 * and notes. What belongs to the fluid alone is made once. May be asked by several threads at a time.
 */
public final class Trials {
    private final WorkingFluid fluid;
    private final TabulatedFluid tables;

    /** @param fluid the fluid of every rig that will be asked about */
    public Trials(WorkingFluid fluid) {
        this.fluid = fluid;
        tables = Questions.tables(fluid);
    }

    /**
     * What one trial finds.
     *
     * @param margins those of a check, or along the run where only that was asked for; worst first
     * @param events those of the warm-up; none without it
     */
    public record Trial(List<Margin> margins, List<TimeEvent> events) {
        public Trial {
            margins = List.copyOf(margins);
            events = List.copyOf(events);
        }
    }

    /**
     * The margins at rest, without the one of fuel, for which a warm-up would have to be computed.
     *
     * @param rig the rig
     * @param values values of the uncertain defaults
     * @throws ComputationException when no answer can be stood behind
     */
    public Trial atRest(Rig rig, ParameterValues values) {
        return check(rig, values, Optional::empty);
    }

    /**
     * Margins and events of a whole check.
     *
     * @param rig the rig
     * @param values values of the uncertain defaults
     * @param cancel stops the computation
     * @throws ComputationException when no answer can be stood behind
     * @throws boilwright.errors.CancelledException when cancelled
     */
    public Trial check(Rig rig, ParameterValues values, CancelToken cancel) {
        return check(rig, values, () -> Optional.of(run(rig, values, cancel)));
    }

    /** Margins and events of a warm-up; arguments and errors as for {@link #check}. */
    public Trial warmup(Rig rig, ParameterValues values, CancelToken cancel) {
        RunResult run = run(rig, values, cancel);
        return new Trial(Margins.worstFirst(Questions.alongWarmup(rig, fluid, run)), run.events());
    }

    private RunResult run(Rig rig, ParameterValues values, CancelToken cancel) {
        return RunSimulator.warmup(rig, tables, values, cancel, ProgressSink.NONE);
    }

    private Trial check(Rig rig, ParameterValues values, Supplier<Optional<RunResult>> run) {
        SteadySolver solver = new SteadySolver(rig, tables, values);
        SteadyState steady = solver.steady();
        Questions.requireClosed("the steady state", steady.closureRelative());
        NeededState needed = solver.needed();
        Questions.requireClosed("the needed state", needed.state().closureRelative());
        Optional<RunResult> warmup = run.get(); // last: what has no state at rest is refused without the long wait
        return new Trial(
                Margins.of(rig, fluid, values, steady, needed, warmup),
                warmup.map(RunResult::events).orElse(List.of()));
    }
}
