package boilwright.spread;

import boilwright.numerics.Tally;
import java.util.OptionalDouble;

/**
 * The middle of many values. What never comes counts as later than everything, so that an end may be empty.
 *
 * @param low a tenth of the samples lie at or below it
 * @param median half of them do
 * @param high nine tenths of them do
 */
public record Band(OptionalDouble low, OptionalDouble median, OptionalDouble high) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    static Band of(Tally tally) {
        return new Band(tally.quantile(LOW), tally.quantile(0.5), tally.quantile(HIGH));
    }

    /** Whether there is anything in it. */
    public boolean isEmpty() {
        return low.isEmpty();
    }
}
