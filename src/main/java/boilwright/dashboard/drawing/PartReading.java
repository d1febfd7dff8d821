package boilwright.dashboard.drawing;

import java.util.List;

/**
 * What a part of the drawing shows when it is hovered or has the focus.
 *
 * @param name what it is called
 * @param lines its figures and the margins that live there, one a line
 * @param guess whether some field of it was guessed, not measured
 */
public record PartReading(String name, List<String> lines, boolean guess) {
    public PartReading {
        lines = List.copyOf(lines);
    }

    /** Everything in one sentence-like text, for those who hear it. */
    public String spoken() {
        return name + ". " + String.join(". ", lines);
    }
}
