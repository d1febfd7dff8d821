package boilwright.companion;

import boilwright.sequence.Clock;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** An entry as a line of comma-separated values (RFC 4180, UTF-8, ends with CR LF), and back. */
final class LogLine {
    /** The columns, as the first line names them. */
    static final List<String> COLUMNS =
            List.of("time_utc", "clock", "clock_s", "kind", "step", "quantity", "value", "unit", "text");

    private static final int LONGEST_SHOWN = 60;
    private static final int MOST_STEPS = 1000;

    private LogLine() {}

    /** A cell that can't be read. */
    static final class CellFault extends Exception {
        private static final long serialVersionUID = 1;
        private final String column;
        private final String found;
        private final String accepted;

        CellFault(String column, String found, String accepted) {
            super(column, null, false, false);
            this.column = column;
            this.found = shown(found);
            this.accepted = accepted;
        }

        String column() {
            return column;
        }

        String found() {
            return found;
        }

        String accepted() {
            return accepted;
        }
    }

    static byte[] header() {
        return bytes(COLUMNS.toArray());
    }

    static byte[] of(LogEntry entry) {
        return bytes(
                entry.time().toString(),
                entry.clock().map(Clock::id).orElse(""),
                number(entry.clockS()),
                entry.kind().id(),
                entry.step() == 0 ? "" : Integer.toString(entry.step()),
                entry.quantity(),
                number(entry.value()),
                entry.unit(),
                entry.text());
    }

    private static byte[] bytes(Object... cells) {
        // one happening, one line: only so can a torn line be told from a whole one
        Object[] plain = Arrays.stream(cells)
                .map(cell -> cell.toString().replaceAll("\\p{Cntrl}|\u2028|\u2029", " "))
                .toArray();
        return (CSVFormat.RFC4180.format(plain) + "\r\n").getBytes(StandardCharsets.UTF_8);
    }

    private static String number(OptionalDouble value) {
        if (value.isEmpty()) {
            return "";
        }
        if (!Double.isFinite(value.getAsDouble())) {
            throw new IllegalArgumentException("a log holds finite numbers, not " + value.getAsDouble());
        }
        return Double.toString(value.getAsDouble());
    }

    /** The cells of a line without its end. */
    static List<String> cells(String line) throws CellFault {
        try (CSVParser parser = CSVParser.parse(line, CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            if (records.size() == 1 && records.get(0).size() == COLUMNS.size()) {
                return records.get(0).toList();
            }
        } catch (IOException | UncheckedIOException e) {
            throw new CellFault("the whole line", line, COLUMNS.size() + " comma-separated values");
        }
        throw new CellFault("the whole line", line, COLUMNS.size() + " comma-separated values");
    }

    /** The entry that a line tells. */
    static LogEntry read(String line) throws CellFault {
        List<String> cells = cells(line);
        return new LogEntry(
                time(cells.get(0)),
                clock(cells.get(1)),
                number("clock_s", cells.get(2)),
                kind(cells.get(3)),
                step(cells.get(4)),
                cells.get(5),
                number("value", cells.get(6)),
                cells.get(7),
                cells.get(8));
    }

    private static Instant time(String text) throws CellFault {
        try {
            return Instant.parse(text);
        } catch (DateTimeParseException e) {
            throw new CellFault("time_utc", text, "a time such as 2026-03-01T09:30:00.250Z");
        }
    }

    private static Optional<Clock> clock(String text) throws CellFault {
        Optional<Clock> clock =
                Arrays.stream(Clock.values()).filter(c -> c.id().equals(text)).findFirst();
        if (clock.isEmpty() && !text.isEmpty()) {
            throw new CellFault("clock", text, "from-cold, from-hot or nothing");
        }
        return clock;
    }

    private static LogKind kind(String text) throws CellFault {
        return LogKind.of(text)
                .orElseThrow(() -> new CellFault("kind", text, "one of " + String.join(", ", LogKind.ids())));
    }

    private static int step(String text) throws CellFault {
        if (text.isEmpty()) {
            return 0;
        }
        if (text.matches("[1-9][0-9]{0,3}") && Integer.parseInt(text) <= MOST_STEPS) {
            return Integer.parseInt(text);
        }
        throw new CellFault("step", text, "a whole number from 1 to " + MOST_STEPS + ", or nothing");
    }

    private static OptionalDouble number(String column, String text) throws CellFault {
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (text.matches("[-+]?[0-9]+(\\.[0-9]*)?([eE][-+]?[0-9]+)?")) {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return OptionalDouble.of(value);
            }
        }
        throw new CellFault(column, text, "a number with a point, or nothing");
    }

    /** A text as messages show it. */
    static String shown(String text) {
        if (text.isEmpty()) {
            return "nothing";
        }
        String plain = text.replaceAll("\\p{Cntrl}", " ");
        return "\"" + (plain.length() > LONGEST_SHOWN ? plain.substring(0, LONGEST_SHOWN) + " ..." : plain) + "\"";
    }
}
