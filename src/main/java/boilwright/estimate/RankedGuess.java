package boilwright.estimate;

import boilwright.units.Dimension;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How much one guess moves the heat margin. Marked fields of all entries of a list (all throat gaps, say) rest on one guess
 * and are moved together.
 *
 * @param path path of the field; with {@code []} when entries of a list were moved together
 * @param moved paths of the fields that were moved
 * @param low least value that was tried, SI; of the last of them
 * @param high greatest value that was tried, SI; of the last of them
 * @param dimension what it measures
 * @param ratioNow the heat margin (heat available over heat needed) with the guess as it is
 * @param ratioAtLow the heat margin at the low end; empty when there the model finds no working state
 * @param ratioAtHigh the heat margin at the high end; empty likewise
 */
public record RankedGuess(
        String path,
        List<String> moved,
        double low,
        double high,
        Dimension dimension,
        double ratioNow,
        OptionalDouble ratioAtLow,
        OptionalDouble ratioAtHigh) {
    public RankedGuess {
        moved = List.copyOf(moved);
    }

    /** The largest change of the heat margin, either way. */
    public double change() {
        double atLow = Math.abs(ratioAtLow.orElse(ratioNow) - ratioNow);
        double atHigh = Math.abs(ratioAtHigh.orElse(ratioNow) - ratioNow);
        return Math.max(atLow, atHigh);
    }

    /** Whether the heat is enough at one end and not at the other (limit 1). */
    public boolean decides() {
        boolean anyBelow = ratioNow < 1 || ratioAtLow.orElse(ratioNow) < 1 || ratioAtHigh.orElse(ratioNow) < 1;
        boolean anyAbove = ratioNow >= 1 || ratioAtLow.orElse(ratioNow) >= 1 || ratioAtHigh.orElse(ratioNow) >= 1;
        return anyBelow && anyAbove;
    }
}
