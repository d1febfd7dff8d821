package boilwright.drill;

import boilwright.rig.Protection.Trip;
import boilwright.rig.Protection.TripKind;
import boilwright.thermal.Fault;
import boilwright.units.Dimension;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A trip that a rig should have, with what the model says of it.
 *
 * @param kind what it watches
 * @param usual the furthest that the value gets towards the limit while all is well: K, m3/s or Pa
 * @param limit where the harm begins: K, m3/s or Pa
 * @param setPoint where it should trip; empty when what is usual reaches the limit
 * @param hysteresis how far the value must come back before it may be reset: K, m3/s or Pa
 * @param longestDelayS longest time that the value may stand beyond the set point before the heat is cut, s; empty when it shows
 *     no fault in time
 * @param catches the faults that it shows in time for a cut of the heat to keep everything whole, soonest first
 * @param warns the faults that no cut keeps from harming, which it shows before the first harm
 * @param own the rig's own trip of this kind
 * @param standing how the rig stands with it
 * @param sentence the same in words
 */
public record Interlock(
        TripKind kind,
        double usual,
        double limit,
        OptionalDouble setPoint,
        double hysteresis,
        OptionalDouble longestDelayS,
        List<Fault> catches,
        List<Fault> warns,
        Optional<Trip> own,
        Standing standing,
        String sentence) {
    public Interlock {
        catches = List.copyOf(catches);
        warns = List.copyOf(warns);
    }

    /** What it watches, as a table has it. */
    public String title() {
        return DrillWords.title(kind);
    }

    /** What its values measure. */
    public Dimension dimension() {
        return switch (kind) {
            case WATER_FLOW -> Dimension.VOLUME_FLOW;
            case FORELINE_PRESSURE -> Dimension.PRESSURE;
            default -> Dimension.TEMPERATURE;
        };
    }

    /** What its hysteresis measures. */
    public Dimension differenceDimension() {
        return dimension() == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension();
    }

    /** How a rig stands with an interlock. */
    public enum Standing {
        /** The rig has one, and it acts in time. */
        THERE,
        /** The rig has one that trips while all is well. */
        TOO_EARLY,
        /** The rig has one that is set too far away or waits too long. */
        TOO_LATE,
        /** The rig has none, and one would catch a fault in time. */
        LACKING,
        /** The rig has none, and needs none: others catch the same. */
        SECOND,
        /** What is usual reaches the limit, so that no set point is left. */
        NO_ROOM,
        /** None would show any fault in time. */
        OF_NO_USE;

        /** Whether something is to be added or mended. */
        public boolean isWanting() {
            return this == TOO_EARLY || this == TOO_LATE || this == LACKING || this == NO_ROOM;
        }

        /** Name in files. */
        public String id() {
            return boilwright.errors.Sentences.bundleKey(this);
        }
    }
}
