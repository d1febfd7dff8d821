package boilwright.thermal;

import java.util.OptionalDouble;

/**
 * Something that happens in a run.
 *
 * @param id what: heat-on, degassed, first-vapour, front-at-stage, jet-lit, jet-full, full-pumping, crossover-allowed,
 *     limit-reached, fuel-empty, heat-off, jet-lost, flow-zero, jets-gone, air-allowed, touch-safe, water-may-stop,
 *     backing-may-stop
 * @param stage the stage it belongs to; empty for the whole pump
 * @param timeS when, s; empty when it does not happen in the run
 * @param reason what it means or, when it does not happen, why not; a whole sentence
 */
public record TimeEvent(String id, String stage, OptionalDouble timeS, String reason) {}
