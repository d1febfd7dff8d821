package boilwright.estimate;

import boilwright.rig.Rig;
import java.util.List;
import java.util.Optional;

/**
 * A whole rig made from outside measurements.
 *
 * @param rig the rig, each guessed field marked
 * @param guesses the guesses in the order of the rig's fields
 * @param throats how the throats were found; empty when they were measured
 * @param notes what else a person should know about the estimate, whole sentences
 */
public record RigEstimate(Rig rig, List<Guess> guesses, Optional<ThroatFit> throats, List<String> notes) {
    public RigEstimate {
        guesses = List.copyOf(guesses);
        notes = List.copyOf(notes);
    }
}
