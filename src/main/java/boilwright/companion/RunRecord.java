package boilwright.companion;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;

/**
 * A run log as it was read.
 *
 * @param file where it stands
 * @param head what its first lines say
 * @param entries everything after them
 * @param lines the whole lines with their ends, as they stand in the file
 * @param torn what follows the last whole line; empty when nothing does
 */
public record RunRecord(Path file, LogHead head, List<LogEntry> entries, List<byte[]> lines, byte[] torn) {
    public RunRecord {
        entries = List.copyOf(entries);
        lines = List.copyOf(lines);
    }

    /** Whether its run was ended. */
    public boolean isEnded() {
        boolean ended = false;
        for (LogEntry entry : entries) {
            if (entry.kind() == LogKind.END) {
                ended = true;
            } else if (entry.kind() == LogKind.RESUME) {
                ended = false;
            }
        }
        return ended;
    }

    /** When the last line was written. */
    public Instant lastTime() {
        return entries.isEmpty()
                ? head.begun()
                : entries.get(entries.size() - 1).time();
    }

    /** Bytes of the whole lines. */
    long wholeLength() {
        return lines.stream().mapToLong(line -> line.length).sum();
    }
}
