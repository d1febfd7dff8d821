package boilwright.answers;

import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.WorkingFluid;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.util.List;
import java.util.Optional;

/**
 * A rig at rest with its margins, without its warm-up: a few thousandths of a second, for questions that ask many rigs.
 *
 * @param steady the rig at rest
 * @param needed the state in which the weakest jet just has its full flow
 * @param margins worst first; that of the fuel needs a run and is not among them
 */
public record RestAnswer(SteadyState steady, NeededState needed, List<Margin> margins) {
    public RestAnswer {
        margins = List.copyOf(margins);
    }

    /**
     * The rig at rest.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param tables the same fluid as tables
     * @param values the parameter values
     * @throws boilwright.errors.ComputationException when no state can be stood behind
     */
    public static RestAnswer of(Rig rig, WorkingFluid fluid, TabulatedFluid tables, ParameterValues values) {
        SteadySolver solver = new SteadySolver(rig, tables, values);
        SteadyState steady = solver.steady();
        Questions.requireClosed("the steady state", steady.closureRelative());
        NeededState needed = solver.needed();
        Questions.requireClosed("the needed state", needed.state().closureRelative());
        return new RestAnswer(steady, needed, Margins.of(rig, fluid, values, steady, needed, Optional.empty()));
    }
}
