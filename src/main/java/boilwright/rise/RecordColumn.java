package boilwright.rise;

import boilwright.errors.MessageKey;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import boilwright.units.UnitSpelling;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A column of a record's file.
 *
 * @param quantity what it holds
 * @param index its place, from 0
 * @param header its name as it stands in the file
 * @param unit the unit in its name
 */
record RecordColumn(Quantity quantity, int index, String header, UnitSpelling unit) {
    private static final Map<Quantity, Pattern> NAMES = Map.of(
            Quantity.TIME, name("time|t|elapsed"),
            Quantity.PRESSURE, name("pressure|p"));
    private static final Map<Quantity, String> EXAMPLES =
            Map.of(Quantity.TIME, "time_s or t [min]", Quantity.PRESSURE, "pressure_Pa or p [mTorr]");

    private static Pattern name(String names) {
        String unit = "(?:\\s*\\[(?<u1>.*)\\]|\\s*\\((?<u2>.*)\\)|\\s*/(?<u3>.*)|_(?<u4>.*)|(?<none>))";
        return Pattern.compile("(?i:" + names + ")" + unit);
    }

    /**
     * The column of a quantity.
     *
     * @return empty when there is none; the fault is reported then
     */
    static Optional<RecordColumn> find(Quantity quantity, List<String> headers, long line, RecordFaults faults) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (NAMES.get(quantity).matcher(headers.get(i)).matches()) {
                places.add(i);
            }
        }
        String example = EXAMPLES.get(quantity);
        if (places.isEmpty()) {
            String found = headers.stream().map(RecordText::quoted).collect(Collectors.joining(", "));
            faults.reportLine(line, MessageKey.RISE_COLUMN_MISSING, quantity.word(), example, found);
            return Optional.empty();
        }
        String header = headers.get(places.get(0));
        if (places.size() > 1) {
            String other = headers.get(places.get(1));
            faults.reportLine(
                    line,
                    MessageKey.RISE_COLUMN_DOUBLED,
                    quantity.word(),
                    RecordText.quoted(header),
                    RecordText.quoted(other));
            return Optional.empty();
        }
        String unit = unit(quantity, header);
        if (unit.isEmpty()) {
            faults.reportLine(line, MessageKey.RISE_COLUMN_WITHOUT_UNIT, RecordText.quoted(header), example);
            return Optional.empty();
        }
        Reading reading = QuantityReader.read("1 " + unit, quantity.dimension());
        if (reading instanceof Reading.Refused refused) {
            faults.reportLine(
                    line,
                    MessageKey.RISE_COLUMN_UNIT,
                    RecordText.quoted(header),
                    refused.fault().text());
            return Optional.empty();
        }
        return Optional.of(new RecordColumn(quantity, places.get(0), header, ((Reading.Read) reading).unit()));
    }

    private static String unit(Quantity quantity, String header) {
        Matcher matcher = NAMES.get(quantity).matcher(header);
        if (!matcher.matches()) {
            return "";
        }
        for (String group : List.of("u1", "u2", "u3", "u4")) {
            if (matcher.group(group) != null) {
                return matcher.group(group).strip();
            }
        }
        return "";
    }

    /**
     * The value of a cell in SI.
     *
     * @param accepted words of {@link Quantity} whose unusual values are meant
     * @return NaN when it was refused; the fault is reported then
     */
    double read(String cell, long line, Set<String> accepted, RecordFaults faults) {
        String text = cell.strip();
        if (text.isEmpty()) {
            return refuse(faults, line, MessageKey.RISE_CELL_BLANK);
        }
        if (text.indexOf(':') >= 0) {
            return refuse(faults, line, MessageKey.RISE_CELL_CLOCK, RecordText.quoted(text));
        }
        if (text.chars().noneMatch(Character::isDigit)) {
            return refuse(faults, line, MessageKey.RISE_CELL_TEXT, RecordText.quoted(text));
        }
        if (QuantityReader.read(text, quantity.dimension()) instanceof Reading.Read) {
            return refuse(faults, line, MessageKey.RISE_CELL_WITH_UNIT, RecordText.quoted(text));
        }
        Reading reading = QuantityReader.read(text + " " + unit.text(), quantity.dimension());
        if (reading instanceof Reading.Read read) {
            return read.si();
        }
        Reading.Refused refused = (Reading.Refused) reading;
        if (refused.asWritten().isPresent() && quantity.isAccepted(accepted)) {
            return refused.asWritten().get().si();
        }
        return refused.asWritten().isPresent()
                ? refuse(
                        faults, line, MessageKey.RISE_CELL_SLIP, refused.fault().text(), quantity.word())
                : refuse(
                        faults,
                        line,
                        MessageKey.RISE_CELL_REFUSED,
                        refused.fault().text());
    }

    private double refuse(RecordFaults faults, long line, MessageKey key, String... values) {
        faults.reportCell(line, this, key, values);
        return Double.NaN;
    }
}
