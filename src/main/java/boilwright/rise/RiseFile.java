package boilwright.rise;

import boilwright.errors.InputRefusedException;
import boilwright.errors.MessageKey;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a record from comma-separated values; semicolons and tabs part columns too. The first line that is neither empty nor a
 * comment (it begins with #) names the columns; time and pressure carry their unit in the name, all other columns are passed
 * over. docs/user-guide/rise.md has every rule.
 */
public final class RiseFile {
    /** Most readings of a record. */
    public static final int MOST = 10_000;

    private static final double AIR_PA = 1.1e5;

    private final RecordFaults faults;
    private final Set<String> accepted;
    private final List<RiseRecord.Reading> readings = new ArrayList<>();
    private int rows;

    private RiseFile(String name, Set<String> accepted) {
        this.faults = new RecordFaults(name);
        this.accepted = Set.copyOf(accepted);
    }

    /**
     * Reads a file.
     *
     * @param file UTF-8 text of at most 4 MB and {@value #MOST} readings
     * @param accepted words of {@link Quantity} whose unusual values are meant
     * @throws InputRefusedException with the faults found, or when it can't be read
     */
    public static RiseRecord read(Path file, Set<String> accepted) {
        Quantity.checkAccepted(accepted);
        return readText(file.toString(), RecordText.of(file), accepted);
    }

    /**
     * Reads the text of a file.
     *
     * @param name what messages call it
     * @throws InputRefusedException with the faults found
     */
    static RiseRecord readText(String name, String text, Set<String> accepted) {
        RiseFile reader = new RiseFile(name, accepted);
        return reader.table(text);
    }

    private RiseRecord table(String text) {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setDelimiter(delimiter(text))
                .setCommentMarker('#')
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(true)
                .get();
        String ended = text.endsWith("\n") ? text : text + "\n";
        try (CSVParser parser = CSVParser.parse(ended, format)) {
            return table(parser);
        } catch (IOException | UncheckedIOException e) {
            faults.report(MessageKey.RISE_FILE_BROKEN);
            faults.refuse();
            throw new IllegalStateException("a fault was reported", e);
        }
    }

    private RiseRecord table(CSVParser parser) {
        Iterator<CSVRecord> lines = parser.iterator();
        if (!lines.hasNext()) {
            faults.report(MessageKey.RISE_FILE_EMPTY);
            faults.refuse();
        }
        List<String> headers = lines.next().toList();
        long line = parser.getCurrentLineNumber();
        if (headers.stream().allMatch(header -> header.matches("\\s*[-+.0-9][-+.,0-9eE]*\\s*"))) {
            faults.reportLine(line, MessageKey.RISE_HEADER_MISSING);
            faults.refuse();
        }
        Optional<RecordColumn> time = RecordColumn.find(Quantity.TIME, headers, line, faults);
        Optional<RecordColumn> pressure = RecordColumn.find(Quantity.PRESSURE, headers, line, faults);
        faults.refuse();
        while (lines.hasNext()) {
            CSVRecord row = lines.next();
            row(row, parser.getCurrentLineNumber(), headers.size(), time.orElseThrow(), pressure.orElseThrow());
            if (++rows > MOST) {
                faults.report(MessageKey.RISE_TOO_MANY, Integer.toString(MOST));
                break;
            }
        }
        faults.refuse();
        if (rows < RiseRecord.FEWEST) {
            faults.report(MessageKey.RISE_TOO_FEW_ROWS, Integer.toString(rows), Integer.toString(RiseRecord.FEWEST));
            faults.refuse();
        }
        RiseRecord record = new RiseRecord(
                readings, time.orElseThrow().unit(), pressure.orElseThrow().unit());
        checkUsual(record, time.orElseThrow(), pressure.orElseThrow());
        faults.refuse();
        return record;
    }

    private void row(CSVRecord row, long line, int columns, RecordColumn time, RecordColumn pressure) {
        if (row.size() != columns) {
            faults.reportLine(
                    line, MessageKey.RISE_ROW_LENGTH, Integer.toString(row.size()), Integer.toString(columns));
            return;
        }
        double t = time.read(row.get(time.index()), line, accepted, faults);
        double p = pressure.read(row.get(pressure.index()), line, accepted, faults);
        if (p <= 0) {
            faults.reportCell(line, pressure, MessageKey.RISE_PRESSURE_NOT_POSITIVE, written(p, pressure.unit()));
        }
        if (!readings.isEmpty() && t <= last()) {
            faults.reportCell(
                    line, time, MessageKey.RISE_TIME_BACK, written(t, time.unit()), written(last(), time.unit()));
        }
        if (Double.isFinite(t) && Double.isFinite(p)) {
            readings.add(new RiseRecord.Reading(t, p));
        }
    }

    private double last() {
        return readings.get(readings.size() - 1).timeS();
    }

    /** Whether the units are probably others than those written. */
    private void checkUsual(RiseRecord record, RecordColumn time, RecordColumn pressure) {
        slip(time, record.spanS());
        slip(pressure, record.readings().get(0).pressurePa());
        if (faults.isClean()) {
            record.readings().stream()
                    .filter(reading -> reading.pressurePa() > AIR_PA)
                    .findFirst()
                    .ifPresent(reading -> faults.report(
                            MessageKey.RISE_PRESSURE_ABOVE_AIR, written(reading.pressurePa(), pressure.unit())));
        }
    }

    private void slip(RecordColumn column, double si) {
        Quantity quantity = column.quantity();
        if (quantity.isAccepted(accepted)) {
            return;
        }
        quantity.meant(si, column.unit()).ifPresent(meant -> {
            String found = written(si, column.unit());
            String likely = written(meant.toSi(column.unit().fromSi(si)), meant);
            MessageKey key = quantity == Quantity.TIME ? MessageKey.RISE_TIME_SLIP : MessageKey.RISE_PRESSURE_SLIP;
            faults.report(key, RecordText.quoted(column.header()), found, likely, quantity.usual());
        });
    }

    private static String written(double si, UnitSpelling unit) {
        return QuantityWriter.exact(si, unit);
    }

    /** What parts the columns, from the line that names them. */
    private static char delimiter(String text) {
        String header = text.lines()
                .filter(line -> !line.isBlank() && !line.stripLeading().startsWith("#"))
                .findFirst()
                .orElse("");
        if (header.indexOf('\t') >= 0) {
            return '\t';
        }
        return header.indexOf(';') >= 0 ? ';' : ',';
    }
}
