package boilwright.dashboard.chart;

import boilwright.units.Dimension;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.List;
import java.util.Optional;

/**
 * What an axis measures and how it is laid out at first.
 *
 * @param title the quantity in words
 * @param dimension what it measures; a time is written h:mm:ss along the x axis
 * @param logarithmic whether equal steps are equal ratios
 * @param fromZero whether zero is always in view on a linear axis
 * @param floor SI; what lies below is left out of the first view (one can still zoom there); NaN for none. For quantities that
 *     fall over so many decades that nothing else could be read
 * @param unit the unit at first; empty for the one in which people usually read values of that size
 * @param stretches parts of a time axis with clocks of their own, in order and without gaps; empty for one clock
 */
public record Axis(
        String title,
        Dimension dimension,
        boolean logarithmic,
        boolean fromZero,
        double floor,
        Optional<UnitSpelling> unit,
        List<Stretch> stretches) {
    public Axis {
        stretches = List.copyOf(stretches);
    }

    /** A linear axis. */
    public static Axis of(String title, Dimension dimension) {
        return new Axis(title, dimension, false, false, Double.NaN, Optional.empty(), List.of());
    }

    /** An axis of time with one clock. */
    public static Axis time(String title) {
        return of(title, Dimension.TIME);
    }

    /** An axis of time whose parts have clocks of their own. */
    public static Axis time(String title, List<Stretch> stretches) {
        return new Axis(title, Dimension.TIME, false, false, Double.NaN, Optional.empty(), stretches);
    }

    /** The same axis, logarithmic. */
    public Axis log() {
        return new Axis(title, dimension, true, fromZero, floor, unit, stretches);
    }

    /** The same axis with zero always in view. */
    public Axis withZero() {
        return new Axis(title, dimension, logarithmic, true, floor, unit, stretches);
    }

    /** The same axis with what is lower left out of the first view. */
    public Axis above(double lowest) {
        return new Axis(title, dimension, logarithmic, fromZero, lowest, unit, stretches);
    }

    /**
     * The same axis, at first in this unit.
     *
     * @param spelling one that the table of units has for the dimension
     */
    public Axis in(String spelling) {
        UnitSpelling first = UnitTable.find(spelling, dimension).orElseThrow();
        return new Axis(title, dimension, logarithmic, fromZero, floor, Optional.of(first), stretches);
    }

    boolean isTime() {
        return dimension == Dimension.TIME;
    }
}
