package boilwright.report;

import boilwright.answers.Margin;
import boilwright.spread.Band;
import boilwright.spread.Chance;
import boilwright.spread.EventSpread;
import boilwright.spread.InputShare;
import boilwright.spread.MarginSpread;
import boilwright.spread.SpreadAnswer;
import boilwright.spread.SpreadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * An uncertainty run as comma-separated values: one line for each margin and event with its band and chance, then a column for the share of each
 * input. SI, as many digits as give the same double again; empty where there is nothing.
 */
public final class SpreadCsv {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    private static final Band NONE = new Band(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    private SpreadCsv() {}

    /** The whole table as text. */
    public static String write(SpreadAnswer answer) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            List<String> head = new ArrayList<>(List.of(
                    "kind",
                    "id",
                    "stage",
                    "unit",
                    "value",
                    "valueLow",
                    "valueMedian",
                    "valueHigh",
                    "ratioLow",
                    "ratioMedian",
                    "ratioHigh",
                    "chance",
                    "chanceLow",
                    "chanceHigh",
                    "samples"));
            answer.inputs().forEach(input -> head.add("share:" + input.id()));
            printer.printRecord(head);
            for (MarginSpread m : answer.margins()) {
                OptionalDouble value = m.nominal().map(Margin::value).orElse(OptionalDouble.empty());
                List<Object> row = new ArrayList<>(
                        List.of("margin", m.id().id(), "", m.dimension().siUnit()));
                row.add(cell(value));
                rest(row, m.band().value(), m.band().ratio(), m.band().failing(), m.shares(), answer.inputs());
                printer.printRecord(row);
            }
            for (EventSpread e : answer.events()) {
                String id = e.key().what().isEmpty()
                        ? e.key().kind().id()
                        : e.key().kind().id() + ": " + e.key().what();
                List<Object> row = new ArrayList<>(List.of("event", id, e.key().stage(), "s"));
                row.add(cell(e.nominalS()));
                rest(row, e.band().timeS(), NONE, e.band().never(), e.shares(), answer.inputs());
                printer.printRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void rest(
            List<Object> row,
            Band value,
            Band ratio,
            Chance chance,
            List<InputShare> shares,
            List<SpreadInput> inputs) {
        for (Band band : List.of(value, ratio)) {
            row.add(cell(band.low()));
            row.add(cell(band.median()));
            row.add(cell(band.high()));
        }
        row.add(chance.isKnown() ? (Object) chance.share() : "");
        row.add(chance.isKnown() ? (Object) chance.low() : "");
        row.add(chance.isKnown() ? (Object) chance.high() : "");
        row.add(chance.samples());
        for (SpreadInput input : inputs) {
            row.add(shares.stream()
                    .filter(share -> share.inputId().equals(input.id()))
                    .map(share -> (Object) share.share())
                    .findFirst()
                    .orElse(""));
        }
    }

    private static Object cell(OptionalDouble value) {
        return value.isPresent() ? (Object) value.getAsDouble() : "";
    }
}
