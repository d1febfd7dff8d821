package boilwright.choice;

import boilwright.rig.Rig;
import java.util.List;
import java.util.Optional;

/**
 * Several heat sources side by side on one rig: an immutable value.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param verdict a few sentences
 * @param pumpingS pumping in one session after full pumping is reached, s
 * @param wanted heat available over heat needed that is wanted
 * @param rows one a source, the rig's own first, then in the order given
 * @param unfit sources that do not go with this boiler, each with the reason
 * @param recommendedId id of the source recommended; empty for none
 * @param recommendedRig the rig with it and with the schedule to run it by; empty for none
 * @param carbonMonoxide what a burner does to the room; empty without a burner among the rows
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record CompareAnswer(
        Rig rig,
        String fluidTitle,
        String verdict,
        double pumpingS,
        double wanted,
        List<SourceRow> rows,
        List<Unfit> unfit,
        Optional<String> recommendedId,
        Optional<Rig> recommendedRig,
        Optional<CarbonMonoxide> carbonMonoxide,
        List<String> cautions,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public CompareAnswer {
        rows = List.copyOf(rows);
        unfit = List.copyOf(unfit);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * A source that was not worked out.
     *
     * @param id its id
     * @param title what people call it
     * @param reason why it does not go with this boiler or has no answer, a whole sentence
     */
    public record Unfit(String id, String title, String reason) {}

    /** The row of an id. */
    public Optional<SourceRow> row(String id) {
        return rows.stream().filter(r -> r.id().equals(id)).findFirst();
    }
}
