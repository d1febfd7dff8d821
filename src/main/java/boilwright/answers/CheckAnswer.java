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
 * @param asked the rig as described, its fluid and the parameter values used
 * @param verdict one or two sentences for a practitioner
 * @param steady the rig at rest
 * @param needed the state in which the weakest jet just has its full flow
 * @param warmup the run from cold
 * @param margins worst first
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions and clamped ranges, whole sentences
 * @param programVersion version of the program
 */
public record CheckAnswer(
        Asked asked,
        String verdict,
        SteadyState steady,
        NeededState needed,
        RunResult warmup,
        List<Margin> margins,
        List<String> cautions,
        List<String> notes,
        String programVersion) {
    public CheckAnswer {
        margins = List.copyOf(margins);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The rig as described. */
    public Rig rig() {
        return asked.rig();
    }

    /** Its fluid's name. */
    public String fluidTitle() {
        return asked.fluid().title();
    }

    /** The parameter values used. */
    public ParameterValues parameters() {
        return asked.values();
    }

    /** Version of the fluid data. */
    public String dataVersion() {
        return asked.dataVersion();
    }

    /** The same with another schedule's warm-up in its place; margins and words stay those of the rest. */
    public CheckAnswer withWarmup(Asked other, RunResult otherRun) {
        return new CheckAnswer(other, verdict, steady, needed, otherRun, margins, cautions, notes, programVersion);
    }

    /** True when some margin fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(m -> m.status() == Margin.Status.FAILS);
    }
}
