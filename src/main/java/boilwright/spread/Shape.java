package boilwright.spread;

import boilwright.rig.Parameter;
import org.apache.commons.math3.distribution.TriangularDistribution;

/** How the values of an input are weighted between its ends. */
public enum Shape {
    /** All alike. */
    UNIFORM("uniform"),
    /** Their logarithms all alike: as likely twice too low as twice too high. */
    LOG_UNIFORM("log-uniform"),
    /** The nominal value the likeliest, falling in a straight line to both ends. */
    TRIANGULAR("triangular");

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
     * @param likeliest the likeliest value, for the triangle
     * @param high greatest value, above the least
     */
    double at(double share, double low, double likeliest, double high) {
        double value = switch (this) {
            case UNIFORM -> low + share * (high - low);
            case LOG_UNIFORM -> low * Math.exp(share * Math.log(high / low));
            case TRIANGULAR -> new TriangularDistribution(low, likeliest, high).inverseCumulativeProbability(share);
        };
        return Math.max(low, Math.min(high, value));
    }
}
