package boilwright.companion;

import boilwright.sequence.Clock;
import boilwright.sequence.Moment;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/** Heads of logs for tests of the recorder, which knows nothing of pumps. */
final class RunHeads {
    static final Instant BEGUN = Instant.parse("2026-03-01T09:30:00.250Z");

    private RunHeads() {}

    static LogHead head(String rig) {
        return new LogHead(
                BEGUN,
                "0.0.0",
                "data",
                rig,
                "oil, of the \"704\" type",
                "normal",
                List.of(
                        new LogHead.PlannedStep(
                                "backing-on",
                                new Moment(Clock.FROM_COLD, 0),
                                OptionalDouble.of(120),
                                "Switch the backing pump on, now."),
                        new LogHead.PlannedStep(
                                "heat", new Moment(Clock.FROM_COLD, 600), OptionalDouble.empty(), "Heat.")));
    }

    static LogEntry note(String words) {
        return LogEntry.of(BEGUN, LogKind.NOTE, "", words);
    }

    static List<String> notes(RunRecord record) {
        return record.entries().stream()
                .filter(e -> e.kind() == LogKind.NOTE && e.quantity().isEmpty())
                .map(LogEntry::text)
                .toList();
    }
}
