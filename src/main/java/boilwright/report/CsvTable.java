package boilwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A table as comma-separated values, one head line of keys; what is absent is empty, and every number is finite. */
final class CsvTable {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    private final StringBuilder text = new StringBuilder();
    private final CSVPrinter printer;

    CsvTable(List<String> keys) {
        try {
            printer = new CSVPrinter(text, FORMAT);
            printer.printRecord(keys);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One row: texts, numbers, and optional numbers. */
    CsvTable row(Object... cells) {
        try {
            for (Object cell : cells) {
                printer.print(written(cell));
            }
            printer.println();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Object written(Object cell) {
        if (cell instanceof OptionalDouble number) {
            return number.isPresent() ? written(number.getAsDouble()) : "";
        }
        if (cell instanceof Double number && !Double.isFinite(number)) {
            throw new IllegalStateException("a table's cell is not a number: " + number);
        }
        return cell;
    }

    String text() {
        return text.toString();
    }
}
