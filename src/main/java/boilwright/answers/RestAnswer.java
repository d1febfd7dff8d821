package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.thermal.NeededState;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.util.List;

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
     * @param asked the rig
     * @throws boilwright.errors.ComputationException when no state can be stood behind
     */
    public static RestAnswer of(Asked asked) {
        SteadySolver solver = new SteadySolver(asked.rig(), asked.tables(), asked.values());
        SteadyState steady = solver.steady();
        requireClosed("the steady state", steady.closureRelative());
        NeededState needed = solver.needed();
        requireClosed("the needed state", needed.state().closureRelative());
        return new RestAnswer(steady, needed, Margins.worstFirst(Margins.atRest(asked, steady, needed)));
    }

    static void requireClosed(String what, double closure) {
        if (!(closure <= SteadySolver.CLOSURE_LIMIT)) {
            throw new ComputationException(Message.of(
                    MessageKey.ENERGY_NOT_CLOSED,
                    what,
                    Double.toString(closure),
                    Double.toString(SteadySolver.CLOSURE_LIMIT)));
        }
    }
}
