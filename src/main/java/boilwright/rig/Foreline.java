package boilwright.rig;

/**
 * The backing side.
 *
 * @param pressurePa pressure that the backing pump holds while oil is heated, Pa
 */
public record Foreline(double pressurePa) {}
