package boilwright.choice;

/**
 * A point of a curve of heat against the temperature of the boiler's heated outer face.
 *
 * @param wallK temperature of that face, K
 * @param watts heat through it, W
 */
public record WallPoint(double wallK, double watts) {}
