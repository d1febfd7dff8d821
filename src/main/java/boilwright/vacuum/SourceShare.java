package boilwright.vacuum;

/**
 * What one source does to the gauge.
 *
 * @param source the source
 * @param atGaugePa what it adds to the pressure at the gauge, Pa
 * @param share the same over the whole pressure there, 0 to 1
 */
public record SourceShare(GasSource source, double atGaugePa, double share) {}
