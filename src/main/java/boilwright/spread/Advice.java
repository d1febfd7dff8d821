package boilwright.spread;

import boilwright.answers.MarginId;
import java.util.Optional;

/**
 * What to find out first about a margin that fails or is tight.
 *
 * @param marginId the margin
 * @param inputId the input to measure; empty when none stands out or none would help
 * @param sentence for a person
 */
public record Advice(MarginId marginId, Optional<String> inputId, String sentence) {}
