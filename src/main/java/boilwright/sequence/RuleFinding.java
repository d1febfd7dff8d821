package boilwright.sequence;

import java.util.Optional;

/**
 * What the simulated run says about one rule in one plan.
 *
 * @param rule the rule
 * @param status whether the plan keeps it
 * @param moment when it is nearest to its limit or, when broken, when it is broken; empty where it was not asked
 * @param value the simulated value there, in words with its unit; may be empty
 * @param limit what is accepted, in words; may be empty
 * @param sentence what was found, a whole sentence
 */
public record RuleFinding(
        Rule rule, Status status, Optional<Moment> moment, String value, String limit, String sentence) {
    /** Whether a plan keeps a rule. */
    public enum Status {
        BROKEN,
        /** What would be needed to say so is not described. */
        NOT_PROVEN,
        KEPT,
        /** Nothing in this rig or plan falls under it. */
        NOT_ASKED;

        /** Name in files. */
        public String id() {
            return boilwright.errors.Sentences.bundleKey(this);
        }
    }
}
