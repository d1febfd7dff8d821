package boilwright.rise;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.ArrayList;
import java.util.List;

/** The faults of one file, the first of them in words: in a table the same fault is soon there a thousand times. */
final class RecordFaults {
    private static final int MOST = 10;

    private final String file;
    private final List<Message> faults = new ArrayList<>();
    private int left;

    RecordFaults(String file) {
        this.file = RecordText.printable(file);
    }

    /** The message of a fault at a place. */
    static Message at(MessageKey fault, String place, String... values) {
        List<String> all = new ArrayList<>(List.of(place));
        all.addAll(List.of(values));
        return new Message(fault, all);
    }

    /** A fault of the whole file. */
    void report(MessageKey fault, String... values) {
        add(fault, file, values);
    }

    /** A fault on a line. */
    void reportLine(long line, MessageKey fault, String... values) {
        add(fault, file + ", line " + line, values);
    }

    /** A fault in a cell. */
    void reportCell(long line, RecordColumn column, MessageKey fault, String... values) {
        add(fault, file + ", line " + line + ", column " + RecordText.quoted(column.header()), values);
    }

    private void add(MessageKey fault, String place, String... values) {
        if (faults.size() == MOST) {
            left++;
            return;
        }
        faults.add(at(fault, place, values));
    }

    boolean isClean() {
        return faults.isEmpty();
    }

    /** @throws InputRefusedException when there was any fault */
    void refuse() {
        if (isClean()) {
            return;
        }
        List<Message> all = new ArrayList<>(faults);
        if (left > 0) {
            all.add(Message.of(MessageKey.RISE_MORE_FAULTS, file, Integer.toString(left)));
        }
        throw new InputRefusedException(all);
    }
}
