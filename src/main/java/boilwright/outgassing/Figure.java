package boilwright.outgassing;

/**
 * A published figure with its range.
 *
 * @param value SI
 * @param low low end of what is believed possible, SI
 * @param high high end, SI
 * @param source key of the source
 * @param where table, page or method
 * @param fromMemory true when the source was not seen by those who wrote the figure down
 */
public record Figure(double value, double low, double high, String source, String where, boolean fromMemory) {}
