package boilwright.rise;

/**
 * One reading of the gauge.
 *
 * @param timeS when, s
 * @param pressurePa what it showed, Pa, &gt; 0
 */
public record RiseReading(double timeS, double pressurePa) {}
