package boilwright.rig.file;

import boilwright.errors.MessageKey;
import boilwright.rig.Rig;
import boilwright.rig.RigPaths;
import boilwright.units.NearestSpelling;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the fields that are marked as guesses are fields of the rig. */
final class GuessChecks {
    private GuessChecks() {}

    /**
     * Reports every mark that is on no field, or on one that is marked already.
     *
     * @param guesses the marks as the file lists them; what is no text was refused before and is empty here
     */
    static void run(Rig rig, List<String> guesses, Findings findings) {
        if (guesses.isEmpty()) {
            return;
        }
        List<String> known = RigPaths.of(rig);
        Set<String> marked = new HashSet<>();
        for (int i = 0; i < guesses.size(); i++) {
            String guess = guesses.get(i);
            String at = "guesses[" + i + "]";
            boolean refusedBefore = guess.isEmpty() && !Shown.quoted("").equals(findings.found(at));
            if (refusedBefore) {
                continue;
            }
            if (!known.contains(guess)) {
                unknown(at, guess, known, findings);
            } else if (!marked.add(guess)) {
                findings.reportField(at, MessageKey.RIG_GUESS_DOUBLED, Shown.quoted(guess));
            }
        }
    }

    private static void unknown(String at, String guess, List<String> known, Findings findings) {
        String shown = Shown.quoted(guess);
        FirstFormat.pathNow(guess)
                .filter(known::contains)
                .or(() -> NearestSpelling.of(guess, known))
                .ifPresentOrElse(
                        near -> findings.reportField(at, MessageKey.RIG_GUESS_UNKNOWN_NEAR, shown, near),
                        () -> findings.reportField(at, MessageKey.RIG_GUESS_UNKNOWN, shown));
    }
}
