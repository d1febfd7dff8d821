package boilwright.report;

import boilwright.thermal.TimeSeries;
import boilwright.thermal.TimeSeries.Column;
import boilwright.thermal.TimeSeries.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A time line as comma-separated values: a head line of keys that end with their unit, then one line for each time. */
public final class SeriesCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    private SeriesCsv() {}

    /** The whole table as text, SI, as many digits as give the same double again. */
    public static String write(TimeSeries series) {
        List<Column> columns =
                series.columns().stream().filter(c -> c.kind() != Kind.JUDGED).toList();
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(columns.stream().map(Column::key));
            int rows = columns.isEmpty() ? 0 : columns.get(0).values().length;
            for (int row = 0; row < rows; row++) {
                for (Column column : columns) {
                    printer.print(finite(column, row));
                }
                printer.println();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static double finite(Column column, int row) {
        double value = column.values()[row];
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("the time line's " + column.key() + " is not a number: " + value);
        }
        return value;
    }
}
