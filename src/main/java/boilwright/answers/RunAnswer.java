package boilwright.answers;

import boilwright.files.ProgramVersion;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.RunResult;
import boilwright.thermal.SeriesQuantity;
import java.util.ArrayList;
import java.util.List;

/**
 * The answer to a question about time: warm-up or cool-down of one rig.
 *
 * @param asked the rig as described, its fluid and the parameter values used
 * @param verdict one or two sentences
 * @param run the run itself
 * @param margins margins met along the run, worst first
 * @param elsewhere what fails in this rig besides, worst first
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 */
public record RunAnswer(
        Asked asked,
        String verdict,
        RunResult run,
        List<Margin> margins,
        List<Margin> elsewhere,
        List<String> cautions,
        List<String> notes,
        String programVersion) {
    public RunAnswer {
        margins = List.copyOf(margins);
        elsewhere = List.copyOf(elsewhere);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** The answer from a run, its verdict and its margins; after the heat is off there is one caution more. */
    static RunAnswer of(
            Asked asked, RunResult run, String verdict, List<Margin> margins, CheckAnswer check, boolean cooling) {
        double wall = RunMargins.highest(run, SeriesQuantity.BOILER_WALL);
        List<String> notes = new ArrayList<>(run.assumptions());
        notes.addAll(asked.rangeNotes(Math.max(wall, RunMargins.highest(run, SeriesQuantity.LIQUID_TEMPERATURE))));
        return new RunAnswer(
                asked,
                check.withElsewhere(verdict, margins),
                run,
                margins,
                check.elsewhere(margins),
                Cautions.of(asked.rig(), asked.fluid(), wall, cooling),
                notes,
                ProgramVersion.current());
    }

    /** True when some margin along the run fails. */
    public boolean anyFails() {
        return margins.stream().anyMatch(Margin::fails);
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
}
