package boilwright.companion;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.files.IoReason;
import boilwright.sequence.Moment;
import boilwright.sequence.Variant;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** Reads a whole run log. What follows the last end of a line is a torn line and no fault; everything else must be whole. */
public final class RunLogReader {
    /** Largest file, bytes: about 300,000 lines. */
    static final long MOST_BYTES = 32_000_000;

    private final Path file;
    private final List<byte[]> lines = new ArrayList<>();
    private final List<LogEntry> entries = new ArrayList<>();
    private int line;

    private RunLogReader(Path file) {
        this.file = file;
    }

    /**
     * Reads a file and leaves it as it is.
     *
     * @throws InputRefusedException when it can't be read or is no run log, with the line and what is accepted
     */
    public static RunRecord read(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw refused(MessageKey.RUN_LOG_UNREADABLE, file.toString(), "it is a folder");
            }
            requireSize(file, Files.size(file));
            return read(file, Files.readAllBytes(file));
        } catch (IOException e) {
            throw refused(MessageKey.RUN_LOG_UNREADABLE, file.toString(), IoReason.of(e));
        }
    }

    static void requireSize(Path file, long bytes) {
        if (bytes > MOST_BYTES) {
            throw refused(MessageKey.RUN_LOG_TOO_LARGE, file.toString(), "32 MB");
        }
    }

    static RunRecord read(Path file, byte[] content) {
        return new RunLogReader(file).record(content);
    }

    private static InputRefusedException refused(MessageKey key, String... values) {
        return new InputRefusedException(Message.of(key, values));
    }

    private InputRefusedException fault(String column, String found, String accepted) {
        return refused(MessageKey.RUN_LOG_REFUSED, file.toString(), Integer.toString(line), column, found, accepted);
    }

    private RunRecord record(byte[] content) {
        int from = 0;
        for (int i = 0; i < content.length; i++) {
            if (content[i] == '\n') {
                line++;
                whole(Arrays.copyOfRange(content, from, i + 1));
                from = i + 1;
            }
        }
        byte[] torn = Arrays.copyOfRange(content, from, content.length);
        if (line == 0) {
            line = 1;
            throw fault("the whole line", LogLine.shown(text(torn)), String.join(",", LogLine.COLUMNS));
        }
        LogHead head = head();
        int after = head.entries().size();
        return new RunRecord(file, head, entries.subList(after, entries.size()), lines, torn);
    }

    private void whole(byte[] bytes) {
        lines.add(bytes);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString()
                    .replaceFirst("\\r?\\n$", "");
            if (line == 1) {
                if (!text.equals(String.join(",", LogLine.COLUMNS))) {
                    throw fault("the whole line", LogLine.shown(text), String.join(",", LogLine.COLUMNS));
                }
                return;
            }
            entries.add(LogLine.read(text));
        } catch (CharacterCodingException e) {
            throw fault("the whole line", LogLine.shown(text(bytes)), "text in UTF-8");
        } catch (LogLine.CellFault e) {
            throw fault(e.column(), e.found(), e.accepted());
        }
    }

    /** Bytes as text, whatever they are. */
    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    private LogHead head() {
        line = 2;
        LogEntry format = entries.isEmpty() ? null : entries.get(0);
        if (format == null
                || format.kind() != LogKind.BEGIN
                || !format.quantity().equals("format")) {
            throw fault("kind and quantity", format == null ? "nothing" : told(format), "begin, format");
        }
        if (format.value().orElse(0) != LogHead.FORMAT) {
            throw fault("value", told(format), "format " + LogHead.FORMAT + "; a later program may read more");
        }
        Map<String, LogEntry> said = new HashMap<>();
        int at = 0;
        for (; at < entries.size() && entries.get(at).kind() == LogKind.BEGIN; at++) {
            said.put(entries.get(at).quantity(), entries.get(at));
        }
        line = at + 2;
        for (String needed : List.of("program", "fluid-data", "rig", "fluid", "variant", "steps")) {
            if (!said.containsKey(needed)) {
                throw fault("quantity", "a head without " + needed, "begin, " + needed);
            }
        }
        String variant = said.get("variant").text();
        if (Variant.of(variant).isEmpty()) {
            throw fault("text of the variant", LogLine.shown(variant), String.join(", ", Variant.ids()));
        }
        return new LogHead(
                format.time(),
                said.get("program").text(),
                said.get("fluid-data").text(),
                said.get("rig").text(),
                said.get("fluid").text(),
                variant,
                steps(at, said.get("steps").value()));
    }

    private List<LogHead.PlannedStep> steps(int from, OptionalDouble number) {
        List<LogHead.PlannedStep> steps = new ArrayList<>();
        for (int at = from; steps.size() < number.orElse(0); at++) {
            line = at + 2;
            LogEntry entry = at < entries.size() ? entries.get(at) : null;
            if (entry == null
                    || entry.kind() != LogKind.PLAN
                    || entry.step() != steps.size() + 1
                    || entry.clock().isEmpty()
                    || entry.clockS().isEmpty()) {
                throw fault(
                        "kind and step",
                        entry == null ? "nothing" : told(entry),
                        "plan, step " + (steps.size() + 1) + " with its clock and time");
            }
            steps.add(new LogHead.PlannedStep(
                    entry.quantity(),
                    new Moment(entry.clock().get(), entry.clockS().getAsDouble()),
                    entry.value(),
                    entry.text()));
        }
        for (int at = from + steps.size(); at < entries.size(); at++) {
            line = at + 2;
            requireSense(entries.get(at), steps.size());
        }
        return steps;
    }

    /** What a line of the run itself must have so that its state can be taken up again. */
    private void requireSense(LogEntry entry, int steps) {
        switch (entry.kind()) {
            case BEGIN, PLAN -> throw fault("kind", told(entry), "begin and plan in the head only");
            case CLOCK -> require(entry.clock().isPresent(), "clock", entry, "from-cold or from-hot");
            case TICK, UNTICK ->
                require(entry.step() > 0 && entry.step() <= steps, "step", entry, "a step from 1 to " + steps);
            case SIGHT -> require(entry.step() <= steps, "step", entry, "a step from 1 to " + steps + ", or nothing");
            case READING -> {
                require(ReadingKind.of(entry.quantity()).isPresent(), "quantity", entry, ReadingKind.ids());
                require(entry.value().isPresent(), "value", entry, "a number");
            }
            default -> {
                // words only: nothing of the state hangs on them
            }
        }
    }

    private void require(boolean holds, String column, LogEntry entry, String accepted) {
        if (!holds) {
            throw fault(column, told(entry), accepted);
        }
    }

    private static String told(LogEntry entry) {
        return LogLine.shown(text(LogLine.of(entry)).strip());
    }
}
