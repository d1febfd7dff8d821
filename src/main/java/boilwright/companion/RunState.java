package boilwright.companion;

import boilwright.sequence.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;

/** What the lines of a log come to: the state of a run follows from them and from nothing else. */
final class RunState {
    /** A clock that was started by mistake: the word that takes its start back. */
    static final String TAKEN_BACK = "taken-back";

    static final String STARTED = "started";

    private final Map<Clock, Instant> starts = new EnumMap<>(Clock.class);
    private final Map<Integer, LogEntry> done = new TreeMap<>();
    private final List<LogEntry> readings = new ArrayList<>();
    private final List<LogEntry> alarms = new ArrayList<>();
    private final Set<String> lasting = new LinkedHashSet<>();
    private final Set<LogEntry> acknowledged = new LinkedHashSet<>();
    private boolean ended;

    /** Takes in what happened next. */
    void apply(LogEntry entry) {
        switch (entry.kind()) {
            case CLOCK -> clock(entry);
            case TICK, SIGHT -> {
                if (entry.step() > 0) {
                    done.put(entry.step(), entry);
                    lasting.remove(Alarms.overdueKey(entry.step()));
                }
            }
            case UNTICK -> done.remove(entry.step());
            case READING -> readings.add(entry);
            case ALARM -> {
                alarms.add(entry);
                lasting.add(Alarms.key(entry));
            }
            case ACKNOWLEDGED -> acknowledged.addAll(alarms);
            case END -> ended = true;
            case RESUME -> ended = false;
            default -> {
                // words, and the head
            }
        }
    }

    private void clock(LogEntry entry) {
        Clock which = entry.clock().orElseThrow();
        if (entry.quantity().equals(TAKEN_BACK)) {
            starts.remove(which);
        } else {
            starts.put(which, entry.time());
        }
    }

    boolean runs(Clock clock) {
        return starts.containsKey(clock);
    }

    /** The clock that counts now: that of the stop once it was started. */
    Optional<Clock> running() {
        if (runs(Clock.FROM_HOT)) {
            return Optional.of(Clock.FROM_HOT);
        }
        return runs(Clock.FROM_COLD) ? Optional.of(Clock.FROM_COLD) : Optional.empty();
    }

    /** Time on a clock that runs, s, never negative. */
    double clockS(Clock clock, Instant now) {
        return Math.max(0, Duration.between(starts.get(clock), now).toMillis() / 1000.0);
    }

    boolean isDone(int step) {
        return done.containsKey(step);
    }

    /** When a step was done on its own clock, s; empty when it was not, or on another clock. */
    OptionalDouble doneS(int step, Clock clock) {
        LogEntry entry = done.get(step);
        return entry != null && entry.clock().equals(Optional.of(clock)) ? entry.clockS() : OptionalDouble.empty();
    }

    /** The step that was done last. */
    Optional<Integer> lastDone() {
        return done.entrySet().stream()
                .max(Map.Entry.<Integer, LogEntry>comparingByValue(java.util.Comparator.comparing(LogEntry::time))
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getKey);
    }

    List<LogEntry> readings() {
        return readings;
    }

    Optional<LogEntry> lastReading(ReadingKind kind) {
        LogEntry last = null;
        for (LogEntry reading : readings) {
            if (reading.quantity().equals(kind.id())) {
                last = reading;
            }
        }
        return Optional.ofNullable(last);
    }

    /** Whether what an alarm told still lasts. */
    boolean lasts(String alarm) {
        return lasting.contains(alarm);
    }

    /** What an alarm told is over; should it come again, it is a new one. */
    void isOver(String alarm) {
        lasting.remove(alarm);
    }

    /** Every alarm with whether it was taken note of. */
    Map<LogEntry, Boolean> alarms() {
        Map<LogEntry, Boolean> all = new LinkedHashMap<>();
        alarms.forEach(alarm -> all.put(alarm, acknowledged.contains(alarm)));
        return all;
    }

    boolean isEnded() {
        return ended;
    }
}
