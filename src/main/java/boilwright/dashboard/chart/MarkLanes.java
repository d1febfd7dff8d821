package boilwright.dashboard.chart;

import java.util.ArrayList;
import java.util.Arrays;
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

    private record Span(double from, double to) {
        boolean meets(Span other) {
            return from < other.to && other.from < to;
        }

        boolean holds(double x) {
            return x > from && x < to;
        }
    }

    private final double low;
    private final double high;
    private final double gap;
    private final List<List<Span>> names = new ArrayList<>();
    private final List<List<Double>> stems = new ArrayList<>();

    private MarkLanes(int lanes, double low, double high, double gap) {
        this.low = low;
        this.high = high;
        this.gap = gap;
        for (int k = 0; k < lanes; k++) {
            names.add(new ArrayList<>());
            stems.add(new ArrayList<>());
        }
    }

    /**
     * Finds places, the first names first.
     *
     * @param x the stems, px
     * @param widths the names' widths, px
     * @param lanes number of rows
     * @param low left end of the rows, px
     * @param high right end of the rows, px
     * @param gap least distance between names, px
     */
    static Place[] place(double[] x, double[] widths, int lanes, double low, double high, double gap) {
        MarkLanes all = new MarkLanes(lanes, low, high, gap);
        Place[] places = new Place[x.length];
        Arrays.setAll(places, i -> all.find(x[i], widths[i]));
        return places;
    }

    private Place find(double x, double width) {
        if (x < low || x > high) {
            return Place.NONE;
        }
        for (int lane = 0; lane < names.size(); lane++) {
            for (boolean toLeft : new boolean[] {false, true}) {
                Span span = toLeft ? new Span(x - width - gap, x) : new Span(x, x + width + gap);
                if (span.from() >= low - gap && span.to() <= high + gap && isFree(span, x, lane)) {
                    names.get(lane).add(span);
                    for (int below = 0; below <= lane; below++) {
                        stems.get(below).add(x);
                    }
                    return new Place(lane, toLeft);
                }
            }
        }
        return Place.NONE;
    }

    private boolean isFree(Span span, double x, int lane) {
        if (names.get(lane).stream().anyMatch(span::meets)
                || stems.get(lane).stream().anyMatch(span::holds)) {
            return false;
        }
        for (int below = 0; below < lane; below++) {
            if (names.get(below).stream().anyMatch(name -> name.holds(x))) {
                return false;
            }
        }
        return true;
    }
}
