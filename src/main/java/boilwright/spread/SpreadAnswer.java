package boilwright.spread;

import boilwright.rig.Rig;
import java.util.List;

/**
 * How sure the answers for a rig are: one immutable value, the same for the same rig, number of samples and seed.
 *
 * @param rig the rig as described
 * @param fluidTitle its fluid's name
 * @param verdict one or two sentences
 * @param scope what was asked of every sample
 * @param seed which of the random shifts
 * @param runs number of samples asked for
 * @param done number of samples computed; fewer than asked for when the run was stopped
 * @param accepted number of samples that gave an answer
 * @param failing in how many of these some margin fails
 * @param inputs what was varied
 * @param margins in the order of the rig as it stands, worst first
 * @param events in the order of the rig as it stands
 * @param rejections the samples without an answer, by reason
 * @param advice what to find out first, for each margin that fails or is tight
 * @param notes assumptions, whole sentences
 * @param programVersion version of the program
 * @param dataVersion version of the fluid data
 */
public record SpreadAnswer(
        Rig rig,
        String fluidTitle,
        String verdict,
        SpreadScope scope,
        long seed,
        int runs,
        int done,
        int accepted,
        Chance failing,
        List<SpreadInput> inputs,
        List<MarginSpread> margins,
        List<EventSpread> events,
        List<Rejection> rejections,
        List<Advice> advice,
        List<String> notes,
        String programVersion,
        String dataVersion) {
    public SpreadAnswer {
        inputs = List.copyOf(inputs);
        margins = List.copyOf(margins);
        events = List.copyOf(events);
        rejections = List.copyOf(rejections);
        advice = List.copyOf(advice);
        notes = List.copyOf(notes);
    }

    /** Whether the run was stopped before its last sample. */
    public boolean isPartial() {
        return done < runs;
    }

    /** Whether some margin fails in more than half of the samples. */
    public boolean mostlyFails() {
        return failing.share() > 0.5;
    }

    /** The bands alone, to be shown beside another answer. */
    public Bands bands() {
        return Bands.of(accepted, margins, events);
    }

    /**
     * Samples that gave no answer, by reason.
     *
     * @param reason stable id of the reason
     * @param samples how many
     * @param impossible true for values that no rig can have together, false for a rig that came to no answer
     * @param firstIndex index of the first of them
     * @param example what was said of that one, a whole sentence
     */
    public record Rejection(String reason, long samples, boolean impossible, int firstIndex, String example) {}
}
