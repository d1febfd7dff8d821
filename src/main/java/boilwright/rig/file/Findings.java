package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.file.Json.Position;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What was found while one file was read: every fault with its line, and what stood at each path. */
final class Findings {
    private record Fault(int line, Message message) {}

    private final String file;
    private final Set<String> acceptedFields;
    private final boolean withLines;
    private final List<Fault> faults = new ArrayList<>();
    private final Map<String, Json> seen = new HashMap<>();

    /**
     * @param file name of the file, as messages show it
     * @param acceptedFields paths of fields whose likely slips are meant as written
     */
    Findings(String file, Set<String> acceptedFields) {
        this(file, acceptedFields, true);
    }

    private Findings(String place, Set<String> acceptedFields, boolean withLines) {
        this.file = Shown.printable(place);
        this.acceptedFields = Set.copyOf(acceptedFields);
        this.withLines = withLines;
    }

    /** Findings about what stands in no file yet, so that there are no lines to name. */
    static Findings ofNoFile(String place, Set<String> acceptedFields) {
        return new Findings(place, acceptedFields, false);
    }

    /** Name of the file, fit to be shown. */
    String file() {
        return file;
    }

    /** Remembers what stands at a path. */
    void saw(String path, Json value) {
        seen.put(path, value);
    }

    /** What stands at a path, as a message shows it; empty when nothing does. */
    String found(String path) {
        return seen.containsKey(path) ? seen.get(path).shown() : "";
    }

    /** Whether the user says that an unusual value at this path is meant. */
    boolean accepts(String path) {
        return acceptedFields.contains(path) || acceptedFields.contains(FieldCatalogue.general(path));
    }

    /** A fault at a position: the place becomes the message's first value. */
    void reportAt(Position at, MessageKey key, String... values) {
        List<String> all = new ArrayList<>(List.of(withLines ? file + ", line " + at.line() : file));
        all.addAll(List.of(values));
        faults.add(new Fault(at.line(), new Message(key, all)));
    }

    /** A fault of the field at a path: place and path become the message's first two values. */
    void reportField(String path, MessageKey key, String... values) {
        List<String> all = new ArrayList<>(List.of(path));
        all.addAll(List.of(values));
        reportAt(position(path), key, all.toArray(String[]::new));
    }

    /** Reports a word that is not one of those accepted, with the nearest that is. */
    void reportChoice(String path, String found, Collection<String> accepted) {
        String words = Shown.quotedList(accepted);
        NearestSpelling.of(found, accepted)
                .ifPresentOrElse(
                        near -> reportField(path, MessageKey.RIG_CHOICE_UNKNOWN_NEAR, Shown.quoted(found), words, near),
                        () -> reportField(path, MessageKey.RIG_CHOICE_UNKNOWN, Shown.quoted(found), words));
    }

    /** Whether nothing was wrong so far. */
    boolean isClean() {
        return faults.isEmpty();
    }

    /** The refusal, with all faults in the order of the file; there is at least one. */
    InputRefusedException refusal() {
        return new InputRefusedException(faults.stream()
                .sorted(Comparator.comparingInt(Fault::line))
                .map(Fault::message)
                .toList());
    }

    /** Where a path stands, or the nearest thing around it that the file has. */
    private Position position(String path) {
        String around = path;
        while (!seen.containsKey(around) && !around.isEmpty()) {
            int cut = Math.max(around.lastIndexOf('.'), around.lastIndexOf('['));
            around = around.substring(0, Math.max(cut, 0));
        }
        return seen.containsKey(around) ? seen.get(around).at() : new Position(1, 1);
    }
}
