package boilwright.answers;

import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.DrillLimit;
import boilwright.thermal.DrillRun;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a fault does, with the heat left on, cut some time later, and cut at once.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param parameters the parameter values used
 * @param fault what fails: "water"
 * @param atS when it fails, s from cold along the schedule; empty: at rest at full power
 * @param verdict what it comes to, in sentences
 * @param heatOn the heat left on
 * @param cutLate the heat cut some time after the failure
 * @param cutAtOnce the heat cut with the failure
 * @param longestTripDelayS longest time that a trip may take so that every limit which a cut can keep is kept, s; empty when no
 *     limit is passed even with the heat left on
 * @param governing the limit that a longer delay passes first; empty when none is
 * @param notKept limits that are passed even when the heat is cut at once
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record DrillAnswer(
        Rig rig,
        String fluidTitle,
        ParameterValues parameters,
        String fault,
        OptionalDouble atS,
        String verdict,
        DrillRun heatOn,
        DrillRun cutLate,
        DrillRun cutAtOnce,
        OptionalDouble longestTripDelayS,
        Optional<DrillLimit> governing,
        List<DrillLimit> notKept,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public DrillAnswer {
        notKept = List.copyOf(notKept);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /** What a limit is called in a table. */
    public static String title(DrillLimit limit) {
        return DrillWords.title(limit);
    }
}
