package boilwright.dashboard.drawing;

import boilwright.answers.Margin;
import boilwright.dashboard.text.WindowText;
import java.util.ArrayList;
import java.util.List;

/**
 * What a part of the drawing tells when it is pointed at or has the focus.
 *
 * @param name what it is called
 * @param figures its figures, one a line
 * @param margins the margins that live there
 * @param guess whether some field of it was guessed, not measured
 */
public record PartReading(String name, List<String> figures, List<MarginLine> margins, boolean guess) {
    public PartReading {
        figures = List.copyOf(figures);
        margins = List.copyOf(margins);
    }

    /**
     * A margin that lives at a part.
     *
     * @param words its mark, title, state, value and limit in one line
     * @param margin the margin
     */
    public record MarginLine(String words, Margin margin) {}

    /** All of it, one a line. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(figures);
        margins.forEach(margin -> lines.add(margin.words()));
        if (guess) {
            lines.add(WindowText.say("drawing.guess.why"));
        }
        return lines;
    }

    /** Everything in one sentence-like text, for those who hear it. */
    public String spoken() {
        return name + ". " + String.join(". ", lines());
    }
}
