package boilwright.rise;

/**
 * Gas that the surfaces give off.
 *
 * @param initialRate at the first reading
 * @param timeConstantS time constant of the balance, s; for the power law the time in which the rate halves, s
 * @param byPowerLaw whether the rate falls with one over the time instead of toward a balance
 */
public record SurfaceGas(Rate initialRate, double timeConstantS, boolean byPowerLaw) {}
