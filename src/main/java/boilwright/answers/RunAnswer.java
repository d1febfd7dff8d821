package boilwright.answers;

import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.RunResult;
import java.util.List;

/**
 * The answer to a question about time: warm-up or cool-down of one rig.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param parameters the parameter values used
 * @param verdict one or two sentences
 * @param run the run itself
 * @param margins margins met along the run, worst first
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record RunAnswer(
        Rig rig,
        String fluidTitle,
        ParameterValues parameters,
        String verdict,
        RunResult run,
        List<Margin> margins,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public RunAnswer {
        margins = List.copyOf(margins);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }
}
