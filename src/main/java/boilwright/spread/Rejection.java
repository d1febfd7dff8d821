package boilwright.spread;

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
