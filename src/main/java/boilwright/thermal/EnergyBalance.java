package boilwright.thermal;

/**
 * Energy of a run, integrated.
 *
 * @param inJ heat through the boiler's outer face, J
 * @param toWaterJ carried off by water, J
 * @param toAirJ lost to the room, J
 * @param toForelineJ carried into the foreline, J
 * @param storedJ stored in walls, oil and water at the end less at the start, J
 * @param closureRelative |in - out - stored| over the heat in or, when larger, the heat stored (at least 1 J)
 */
public record EnergyBalance(
        double inJ, double toWaterJ, double toAirJ, double toForelineJ, double storedJ, double closureRelative) {}
