package boilwright.sequence;

import java.util.Comparator;
import java.util.Locale;

/**
 * A moment of a plan.
 *
 * @param clock what the time is counted from
 * @param atS time, s, at least 0
 */
public record Moment(Clock clock, double atS) {
    /** From cold before from hot, then by time. */
    static final Comparator<Moment> ORDER = Comparator.comparing(Moment::clock).thenComparingDouble(Moment::atS);

    /** The time as hours, minutes and seconds, to the second. */
    public String time() {
        long whole = Math.round(atS);
        return String.format(Locale.ROOT, "%d:%02d:%02d", whole / 3600, whole / 60 % 60, whole % 60);
    }

    /** The time and what it is counted from, as a sentence has it. */
    public String inWords() {
        return (clock == Clock.FROM_COLD ? SequenceText.TIME_FROM_COLD : SequenceText.TIME_FROM_HOT).say(time());
    }
}
