package boilwright.vacuum;

/**
 * What one piece of the line costs.
 *
 * @param name its name
 * @param path path of its field
 * @param conductanceM3PerS conductance at the pressure in it, m3/s; infinite when it costs nothing
 * @param dropPa pressure lost along it, Pa
 * @param shareOfLostSpeed its share of what the line takes from the pump's speed, 0 to 1
 */
public record PieceCost(String name, String path, double conductanceM3PerS, double dropPa, double shareOfLostSpeed) {}
