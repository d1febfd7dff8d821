package boilwright.drill;

import boilwright.answers.CheckAnswer;
import boilwright.thermal.Fault;
import java.util.List;

/**
 * Several faults at one rig, and the interlocks that follow from them.
 *
 * @param check the rig as described and as it works without faults
 * @param verdict one or two sentences over all
 * @param played the drills, in the order of the faults
 * @param notPlayed the faults that this rig can't have or that can't be followed
 * @param interlocks the trips that the rig should have
 * @param cautions what can hurt someone, whole sentences
 * @param notes assumptions, whole sentences
 */
public record DrillSet(
        CheckAnswer check,
        String verdict,
        List<DrillAnswer> played,
        List<NotPlayed> notPlayed,
        List<Interlock> interlocks,
        List<String> cautions,
        List<String> notes) {
    public DrillSet {
        played = List.copyOf(played);
        notPlayed = List.copyOf(notPlayed);
        interlocks = List.copyOf(interlocks);
        cautions = List.copyOf(cautions);
        notes = List.copyOf(notes);
    }

    /**
     * A fault without a drill.
     *
     * @param fault which
     * @param reason why
     */
    public record NotPlayed(Fault fault, String reason) {}

    /** Whether nothing was played because the jets of this rig never fill: that is no all-clear. */
    public boolean isWithheld() {
        return played.isEmpty();
    }

    /** Whether some fault harms something although everything that acts by itself has acted. */
    public boolean anyHarms() {
        return played.stream().anyMatch(DrillAnswer::harms);
    }
}
