package boilwright.thermal;

import java.util.OptionalDouble;

/**
 * Something that happens in a run.
 *
 * @param kind what
 * @param stage the stage it belongs to; empty for the whole pump
 * @param timeS when, s; empty when it does not happen in the run
 * @param reason what it means or, when it does not happen, why not; a whole sentence
 */
public record TimeEvent(EventKind kind, String stage, OptionalDouble timeS, String reason) {}
