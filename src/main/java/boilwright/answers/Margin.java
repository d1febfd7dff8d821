package boilwright.answers;

import boilwright.units.Dimension;
import java.util.OptionalDouble;

/**
 * How near one quantity is to its limit.
 *
 * @param id which
 * @param side whether the value must stay at least or at most at the limit
 * @param value the value, SI; empty when it can't be computed
 * @param limit the limit, SI; empty when none is known
 * @param ratio 1.00 at the limit, below 1 fails; temperatures measured from the room; empty when unknown
 * @param status holds, tight, fails or unknown
 * @param tightBelow ratio below which it counts as tight
 * @param moment over what it is judged
 * @param atS when along that run the limit is first passed or, where it holds, come nearest to, s on the run's clock; empty at rest
 * @param basis where the limit comes from or which input is missing, a whole sentence
 * @param cure what would help, a whole sentence; empty while it holds
 */
public record Margin(
        MarginId id,
        Side side,
        OptionalDouble value,
        OptionalDouble limit,
        OptionalDouble ratio,
        Status status,
        double tightBelow,
        Moment moment,
        OptionalDouble atS,
        String basis,
        String cure) {
    /** The same with another sentence on what would help. */
    Margin withCure(String other) {
        return new Margin(id, side, value, limit, ratio, status, tightBelow, moment, atS, basis, other);
    }

    /** Its name with the moment, where that is not rest. */
    public String when() {
        return moment == Moment.REST ? title() : AnswerText.MARGIN_WHEN.say(title(), moment.words());
    }

    /** Whether it fails. */
    public boolean fails() {
        return status == Status.FAILS;
    }

    /** Name that people read. */
    public String title() {
        return id.title();
    }

    /** What value and limit measure. */
    public Dimension dimension() {
        return id.dimension();
    }

    /** Which side of the limit is good. */
    public enum Side {
        AT_LEAST("at-least"),
        AT_MOST("at-most");
        private final String id;

        Side(String id) {
            this.id = id;
        }

        /** How files spell it. */
        public String id() {
            return id;
        }
    }

    /** State of a margin, each with its own mark and word. */
    public enum Status {
        FAILS("fails", 'x'),
        TIGHT("tight", '^'),
        UNKNOWN("unknown", '?'),
        HOLDS("holds", 'o');
        private final String id;
        private final char mark;

        Status(String id, char mark) {
            this.id = id;
            this.mark = mark;
        }

        /** How files spell it. */
        public String id() {
            return id;
        }

        /** Its mark beside the colour. */
        public char mark() {
            return mark;
        }
    }
}
