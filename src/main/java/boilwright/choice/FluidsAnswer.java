package boilwright.choice;

import boilwright.rig.Rig;
import java.util.List;

/**
 * The same rig with each fluid: an immutable value.
 *
 * @param rig the rig as described
 * @param rows one a fluid that could be worked out, the rig's own first
 * @param unfit fluids without an answer, each with the reason
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record FluidsAnswer(
        Rig rig,
        List<FluidRow> rows,
        List<CompareAnswer.Unfit> unfit,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public FluidsAnswer {
        rows = List.copyOf(rows);
        unfit = List.copyOf(unfit);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }
}
