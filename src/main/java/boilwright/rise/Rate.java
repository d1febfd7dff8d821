package boilwright.rise;

/**
 * A rate at which gas comes in, with the interval that holds the true one in 95 of 100 cases.
 *
 * @param value best estimate, Pa m3/s
 * @param low lower end, Pa m3/s
 * @param high upper end, Pa m3/s
 */
public record Rate(double value, double low, double high) {
    Rate times(double factor) {
        return new Rate(value * factor, low * factor, high * factor);
    }
}
