package boilwright.choice;

import java.util.OptionalDouble;

/**
 * The powers at which every jet is full and no limit is passed, as set on the source (rated power times level).
 *
 * @param lowW the least power with every jet at full flow, W; empty when no power is enough
 * @param highW the greatest power before the first limit, W; empty when no limit was met up to {@code searchedToW}
 * @param presentW power set at the end of the schedule, W
 * @param searchedToW how far limits were looked for, W
 * @param limitId margin that is met first; empty for none
 * @param limitTitle its name for people
 * @param sentence the window in words; when there is none, what forbids it
 */
public record PowerWindow(
        OptionalDouble lowW,
        OptionalDouble highW,
        double presentW,
        double searchedToW,
        String limitId,
        String limitTitle,
        String sentence) {
    /** Whether some power makes every jet full without passing a limit. */
    public boolean isOpen() {
        return lowW.isPresent() && (highW.isEmpty() || highW.getAsDouble() >= lowW.getAsDouble());
    }
}
