package boilwright.rise;

import boilwright.errors.RiseMessage;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.Set;

/** Reads single cells of a record's file. */
final class RecordCells {
    private final RecordFaults faults;
    private final Set<String> accepted;

    RecordCells(RecordFaults faults, Set<String> accepted) {
        this.faults = faults;
        this.accepted = accepted;
    }

    /**
     * The value of a cell in SI.
     *
     * @return NaN when it was refused; the fault is reported then
     */
    double read(RecordColumn column, String cell, long line) {
        String text = cell.strip();
        if (text.isEmpty()) {
            return refuse(line, column, RiseMessage.RISE_CELL_BLANK);
        }
        if (text.indexOf(':') >= 0) {
            return refuse(line, column, RiseMessage.RISE_CELL_CLOCK, RecordText.quoted(text));
        }
        if (text.chars().noneMatch(Character::isDigit)) {
            return refuse(line, column, RiseMessage.RISE_CELL_TEXT, RecordText.quoted(text));
        }
        if (QuantityReader.read(text, column.quantity().dimension()) instanceof Reading.Read) {
            return refuse(line, column, RiseMessage.RISE_CELL_WITH_UNIT, RecordText.quoted(text));
        }
        Reading reading = QuantityReader.read(
                text + " " + column.unit().text(), column.quantity().dimension());
        if (reading instanceof Reading.Read read) {
            return read.si();
        }
        Reading.Refused refused = (Reading.Refused) reading;
        if (refused.asWritten().isPresent() && column.quantity().isAccepted(accepted)) {
            return refused.asWritten().get().si();
        }
        return refused.asWritten().isPresent()
                ? refuse(
                        line,
                        column,
                        RiseMessage.RISE_CELL_SLIP,
                        refused.fault().text(),
                        column.quantity().word())
                : refuse(
                        line,
                        column,
                        RiseMessage.RISE_CELL_REFUSED,
                        refused.fault().text());
    }

    private double refuse(long line, RecordColumn column, RiseMessage key, String... values) {
        faults.reportCell(line, column, key, values);
        return Double.NaN;
    }
}
