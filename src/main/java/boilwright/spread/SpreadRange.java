package boilwright.spread;

/**
 * A range that a person gives for an input, in place of the usual one or for a field of the rig that is otherwise taken as exact.
 *
 * @param id of an uncertain default, or path of a field of the rig
 * @param low least value, SI
 * @param high greatest value, SI
 */
public record SpreadRange(String id, double low, double high) {}
