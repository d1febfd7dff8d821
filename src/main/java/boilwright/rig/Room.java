package boilwright.rig;

/**
 * The room around the rig.
 *
 * @param temperatureK air and wall temperature, K
 * @param pressurePa air pressure, Pa
 */
public record Room(double temperatureK, double pressurePa) {}
