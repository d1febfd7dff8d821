package boilwright.choice;

import boilwright.answers.MarginId;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The powers at which every jet is full and no limit is passed, as set on the source (rated power times level).
 *
 * @param lowW the least power with every jet at full flow, W; empty when no power is enough
 * @param highW the greatest power before the first limit, W; empty when no limit was met up to {@code searchedToW}
 * @param presentW power set at the end of the schedule, W
 * @param searchedToW how far limits were looked for, W
 * @param limit margin that is met first; empty for none, and where the pump comes to no rest at a higher power
 * @param limitTitle its name for people
 * @param sentence the window in words; when there is none, what forbids it
 */
public record PowerWindow(
        OptionalDouble lowW,
        OptionalDouble highW,
        double presentW,
        double searchedToW,
        Optional<MarginId> limit,
        String limitTitle,
        String sentence) {
    private static final String NO_STATE = "range";

    /** How files spell what is met first: the margin, or that the pump comes to no rest; empty for none. */
    public String limitId() {
        return limit.map(MarginId::id).orElse(limitTitle.isEmpty() ? "" : NO_STATE);
    }

    /** Whether some power makes every jet full without passing a limit. */
    public boolean isOpen() {
        return lowW.isPresent() && (highW.isEmpty() || highW.getAsDouble() >= lowW.getAsDouble());
    }
}
