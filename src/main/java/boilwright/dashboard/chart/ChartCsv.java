package boilwright.dashboard.chart;

import boilwright.dashboard.text.WindowText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The numbers of a chart as comma-separated values: a head line of titles with their units, then one line for each place, as many
 * digits as give the same double again. In the units chosen; times in seconds.
 */
final class ChartCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    private ChartCsv() {}

    static String write(ChartData data, Choice choice) {
        ChartRows rows = ChartRows.of(data, WindowText.say("chart.table.low"), WindowText.say("chart.table.high"));
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(head(data, choice, rows));
            for (int row = 0; row < rows.size(); row++) {
                printer.printRecord(line(data, choice, rows, row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> head(ChartData data, Choice choice, ChartRows rows) {
        List<String> head = new ArrayList<>();
        if (!data.x().stretches().isEmpty()) {
            head.add(WindowText.say("chart.csv.part"));
            head.add(WindowText.say("chart.csv.part-time"));
        }
        head.add(
                data.x().isTime()
                        ? WindowText.say("chart.csv.time", data.x().title())
                        : ChartWords.title(data.x(), choice.xUnit()));
        for (int k = 0; k < rows.columns(); k++) {
            head.add(
                    choice.yUnit().isPlain()
                            ? rows.title(k)
                            : WindowText.say(
                                    "chart.axis", rows.title(k), choice.yUnit().text()));
        }
        return head;
    }

    private static List<Object> line(ChartData data, Choice choice, ChartRows rows, int row) {
        List<Object> line = new ArrayList<>();
        double place = rows.place(row);
        Stretch stretch = ChartWords.stretch(place, data);
        if (stretch != null) {
            line.add(stretch.title());
            line.add(stretch.ticking() ? (Object) (place - stretch.fromX()) : "");
        }
        line.add(data.x().isTime() ? place : choice.xUnit().fromSi(place));
        for (int k = 0; k < rows.columns(); k++) {
            double si = rows.value(row, k);
            line.add(Double.isFinite(si) ? (Object) choice.yUnit().fromSi(si) : "");
        }
        return line;
    }
}
