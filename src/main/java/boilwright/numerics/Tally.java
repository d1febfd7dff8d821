package boilwright.numerics;

import java.util.Arrays;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Values of one quantity over many samples, for its quantiles. Up to {@value #EXACT} values are kept as they are. Beyond that they
 * are counted in classes of a relative width of 1/4096 (the sign, the exponent and the first 12 digits of the binary number), so
 * that memory stays the same however many come; a quantile is then off by less than 0.03 % of its size. Values that lie beyond
 * everything (an event that never comes) are counted apart and rank last. The answer does not depend on the order in which the values came.
 */
public final class Tally {
    /** Number of values up to which quantiles are exact. */
    public static final int EXACT = 10_000;

    /** Binary digits of a number that are left out of its class. */
    private static final int LEFT_OUT = 52 - 12;
    /** Keeps a rank from being rounded up by the last digit of the share. */
    private static final double ROUNDING = 1e-9;

    private double[] values = new double[64];
    private int kept;
    private TreeMap<Long, Slot> classes;
    private long finite;
    private long never;

    private static final class Slot {
        private long count;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
    }

    /**
     * Counts a value.
     *
     * @throws IllegalArgumentException when it is not finite
     */
    public void add(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a value to tally must be a finite number, not " + value);
        }
        finite++;
        double v = value + 0.0; // one zero only
        if (classes != null) {
            classify(v);
        } else if (kept < EXACT) {
            if (kept == values.length) {
                values = Arrays.copyOf(values, Math.min(EXACT, 2 * kept));
            }
            values[kept++] = v;
        } else {
            classes = new TreeMap<>();
            for (double earlier : values) {
                classify(earlier);
            }
            classify(v);
            values = null;
        }
    }

    /** Counts samples in which the value lies beyond every other. */
    public void addNever(long samples) {
        never += samples;
    }

    /** How many values were counted, those beyond every other left out. */
    public long finite() {
        return finite;
    }

    /** How many samples were beyond every other. */
    public long never() {
        return never;
    }

    /**
     * The least value that at least this share of the samples does not exceed (the inverse of the empirical distribution, no
     * interpolation).
     *
     * @param share 0 to 1
     * @return empty when there are no samples, or when it lies among those beyond every other
     */
    public OptionalDouble quantile(double share) {
        long rank = Math.max(1, (long) Math.ceil(share * (finite + never) - ROUNDING));
        if (rank > finite) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(classes == null ? exact(rank) : nearly(rank));
    }

    private double exact(long rank) {
        double[] sorted = Arrays.copyOf(values, kept);
        Arrays.sort(sorted);
        return sorted[(int) rank - 1];
    }

    private double nearly(long rank) {
        long below = 0;
        for (Map.Entry<Long, Slot> entry : classes.entrySet()) {
            Slot slot = entry.getValue();
            below += slot.count;
            if (below >= rank) {
                return slot.least + (slot.most - slot.least) / 2;
            }
        }
        throw new IllegalStateException("rank " + rank + " of " + below);
    }

    private void classify(double value) {
        long bits = Double.doubleToLongBits(value);
        long ordered = bits ^ ((bits >> (Long.SIZE - 1)) & Long.MAX_VALUE);
        Slot slot = classes.computeIfAbsent(ordered >> LEFT_OUT, key -> new Slot());
        slot.count++;
        slot.least = Math.min(slot.least, value);
        slot.most = Math.max(slot.most, value);
    }
}
