package boilwright.water;

import boilwright.rig.Supply;

/** What a chiller carries away. */
public final class ChillerCapacity {
    private ChillerCapacity() {}

    /** Capacity, W; temperatures beyond the data are taken at its end. */
    public static double within(Supply.Capacity capacity, double waterK, double roomK) {
        throw new UnsupportedOperationException();
    }
}
