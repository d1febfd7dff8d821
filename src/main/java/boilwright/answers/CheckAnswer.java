package boilwright.answers;

import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.SteadyState;
import java.util.List;

/**
 * Everything that one check of a rig finds: one immutable value.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param parameters the parameter values used
 * @param verdict one or two sentences for a practitioner
 * @param steady the rig at rest
 * @param needed the state in which the weakest jet just has its full flow
 * @param warmup the run from cold
 * @param margins worst first
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions and clamped ranges, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record CheckAnswer(
        Rig rig,
        String fluidTitle,
        ParameterValues parameters,
        String verdict,
        SteadyState steady,
        NeededState needed,
        RunResult warmup,
        List<Margin> margins,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public CheckAnswer {
        margins = List.copyOf(margins);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** True when some margin fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(m -> m.status() == Margin.Status.FAILS);
    }
}
