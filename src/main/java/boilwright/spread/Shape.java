package boilwright.spread;

import boilwright.rig.Parameter;

/**
 * How the values of an input are weighted between its ends. Half of them lie on each side of the nominal value, so that the rig as it
 * stands is in the middle of what is sampled; where the nominal value is an end, half of them are that value itself. Where it
 * lies outside the range that a person gave, the range alone counts.
 */
public enum Shape {
    /** All alike on each side. */
    UNIFORM("uniform"),
    /** Their logarithms all alike on each side: as likely twice too low as twice too high. */
    LOG_UNIFORM("log-uniform"),
    /** The nominal value the likeliest, falling in a straight line to both ends. */
    TRIANGULAR("triangular");

    /** Share of the values on each side of the nominal one. */
    private static final double HALF = 0.5;

    private final String id;

    Shape(String id) {
        this.id = id;
    }

    /** How files spell it. */
    public String id() {
        return id;
    }

    static Shape of(Parameter parameter) {
        return switch (parameter.shape()) {
            case UNIFORM -> UNIFORM;
            case LOG_UNIFORM -> LOG_UNIFORM;
        };
    }

    /**
     * The value that this share of all values lies below.
     *
     * @param share cumulative probability, 0 to 1
     * @param low least value; above 0 for logarithms
     * @param nominal the value in the rig as it stands, the likeliest for the triangle
     * @param high greatest value, above the least
     */
    double at(double share, double low, double nominal, double high) {
        if (nominal < low || nominal > high) {
            return between(share, low, high);
        }
        double value = share <= HALF
                ? rising(share / HALF, low, nominal)
                : nominal == high ? high : falling((share - HALF) / HALF, nominal, high);
        return Math.max(low, Math.min(high, value));
    }

    /** From the low end up to the nominal value. */
    private double rising(double share, double low, double nominal) {
        return this == TRIANGULAR ? low + Math.sqrt(share) * (nominal - low) : between(share, low, nominal);
    }

    /** From the nominal value to the high end. */
    private double falling(double share, double nominal, double high) {
        return this == TRIANGULAR ? high - Math.sqrt(1 - share) * (high - nominal) : between(share, nominal, high);
    }

    private double between(double share, double from, double to) {
        return this == LOG_UNIFORM && from > 0
                ? from * Math.exp(share * Math.log(to / from))
                : from + share * (to - from);
    }
}
