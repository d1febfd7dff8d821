package boilwright.numerics;

/**
 * Where an integration ended.
 *
 * @param time time, s
 * @param state state then; belongs to the caller
 * @param stoppedBy the event that ended it, or null when it reached its end time
 * @param statistics what it cost
 */
public record OdeOutcome(double time, double[] state, EventFunction stoppedBy, OdeStatistics statistics) {}
