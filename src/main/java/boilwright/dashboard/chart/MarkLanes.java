package boilwright.dashboard.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Names of events in a few rows above the plot. Each stands beside the stem that rises from its event; no name lies over another
 * one or over a stem that passes. A name that finds no place is left out.
 */
final class MarkLanes {
    /**
     * Where a name stands.
     *
     * @param lane its row, from the plot upwards from 0; -1 when there is no room for it
     * @param toLeft whether it stands left of its stem
     */
    record Place(int lane, boolean toLeft) {
        static final Place NONE = new Place(-1, false);
    }

    private record Name(double stem, int lane, double from, double to) {
        /** Whether two names or a name and the other one's stem come together. */
        boolean meets(Name other) {
            boolean over = lane == other.lane && from < other.to && other.from < to;
            boolean stemThrough = other.lane >= lane && other.stem > from && other.stem < to;
            boolean throughOther = lane >= other.lane && stem > other.from && stem < other.to;
            return over || stemThrough || throughOther;
        }
    }

    /** A longer search would hold the window up for a name that can be read elsewhere. */
    private static final int MOST_STEPS = 400;

    private final double[] x;
    private final double[] widths;
    private final int lanes;
    private final double low;
    private final double high;
    private final double gap;
    private int steps;

    private MarkLanes(double[] x, double[] widths, int lanes, double low, double high, double gap) {
        this.x = x;
        this.widths = widths;
        this.lanes = lanes;
        this.low = low;
        this.high = high;
        this.gap = gap;
    }

    /**
     * Finds places, the first names first: a later one is left out when all before it and itself can't stand together.
     *
     * @param x the stems, px
     * @param widths the names' widths, px
     * @param lanes number of rows
     * @param low left end of the rows, px
     * @param high right end of the rows, px
     * @param gap least distance between names, px
     */
    static Place[] place(double[] x, double[] widths, int lanes, double low, double high, double gap) {
        MarkLanes all = new MarkLanes(x, widths, lanes, low, high, gap);
        Place[] places = new Place[x.length];
        Arrays.fill(places, Place.NONE);
        List<Integer> named = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            if (x[i] >= low && x[i] <= high) {
                List<Integer> more = new ArrayList<>(named);
                more.add(i);
                Place[] together = all.together(more);
                if (together != null) {
                    places = together;
                    named = more;
                }
            }
        }
        return places;
    }

    /** Places for all of these, or null where none are found. */
    private Place[] together(List<Integer> some) {
        Place[] places = new Place[x.length];
        Arrays.fill(places, Place.NONE);
        List<Integer> fromRight = some.stream()
                .sorted(Comparator.comparingDouble((Integer i) -> x[i]).reversed())
                .toList();
        steps = 0;
        return found(fromRight, 0, new ArrayList<>(), places) ? places : null;
    }

    /** Tries the places of one name after the other, the lowest first, and goes back where one blocks the next. */
    private boolean found(List<Integer> order, int next, List<Name> names, Place[] places) {
        if (next == order.size()) {
            return true;
        }
        int i = order.get(next);
        for (int lane = 0; lane < lanes; lane++) {
            for (boolean toLeft : new boolean[] {false, true}) {
                double from = toLeft ? x[i] - widths[i] - gap : x[i];
                double to = toLeft ? x[i] : x[i] + widths[i] + gap;
                Name name = new Name(x[i], lane, from, to);
                if (from < low - gap || to > high + gap || names.stream().anyMatch(name::meets)) {
                    continue;
                }
                names.add(name);
                places[i] = new Place(lane, toLeft);
                if (found(order, next + 1, names, places)) {
                    return true;
                }
                names.remove(names.size() - 1);
                places[i] = Place.NONE;
                if (++steps > MOST_STEPS) {
                    return false;
                }
            }
        }
        return false;
    }
}
