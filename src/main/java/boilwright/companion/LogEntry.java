package boilwright.companion;

import boilwright.sequence.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One line of a run log.
 *
 * @param time when, to the millisecond
 * @param clock the clock of the plan that ran then; empty when none did
 * @param clockS time on that clock, s, to the millisecond; empty without a clock
 * @param kind what happened
 * @param step number of the step, from 1; 0 for none
 * @param quantity what was read, seen or passed; may be empty
 * @param value its value, SI
 * @param unit SI unit of the value; may be empty
 * @param text words, or what was typed; may be empty
 */
public record LogEntry(
        Instant time,
        Optional<Clock> clock,
        OptionalDouble clockS,
        LogKind kind,
        int step,
        String quantity,
        OptionalDouble value,
        String unit,
        String text) {
    public LogEntry {
        time = time.truncatedTo(ChronoUnit.MILLIS);
        if (clockS.isPresent()) {
            clockS = OptionalDouble.of(Math.round(clockS.getAsDouble() * 1000) / 1000.0);
        }
    }

    /** Something outside every clock. */
    static LogEntry of(Instant time, LogKind kind, String quantity, String text) {
        return new LogEntry(
                time, Optional.empty(), OptionalDouble.empty(), kind, 0, quantity, OptionalDouble.empty(), "", text);
    }

    /** The same with a value. */
    LogEntry with(double si, String siUnit) {
        return new LogEntry(time, clock, clockS, kind, step, quantity, OptionalDouble.of(si), siUnit, text);
    }

    /** The same at a time of a clock. */
    LogEntry on(Clock which, double seconds) {
        return new LogEntry(
                time, Optional.of(which), OptionalDouble.of(seconds), kind, step, quantity, value, unit, text);
    }

    /** The same for a step, counted from 1. */
    LogEntry ofStep(int number) {
        return new LogEntry(time, clock, clockS, kind, number, quantity, value, unit, text);
    }
}
