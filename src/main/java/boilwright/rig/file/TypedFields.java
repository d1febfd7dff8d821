package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.file.Json.JsonText;
import boilwright.rig.file.Json.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Values that a person types one by one, on a command line or into a form, read like the fields of a file and refused with
 * the same words. Reading never stops: what is refused is remembered, and {@link #refuseFaults} tells all of it.
 */
public final class TypedFields {
    private final Set<String> acceptedFields;
    private final List<Message> faults = new ArrayList<>();

    /**
     * @param acceptedFields paths of the fields whose unusual values are meant as they are written
     * @throws InputRefusedException when one of them is no field
     */
    public TypedFields(Set<String> acceptedFields) {
        RigReader.checkAccepted(acceptedFields);
        this.acceptedFields = Set.copyOf(acceptedFields);
    }

    /**
     * A quantity, SI.
     *
     * @param place where it was typed, as messages name it
     * @param path path of the field that it is for
     * @param text what was typed
     * @return NaN when it is refused
     */
    public double quantity(String place, String path, String text) {
        Findings findings = Findings.ofNoFile(place, acceptedFields);
        double value = QuantityField.read(field(path), path, typed(text), findings);
        keep(findings);
        return value;
    }

    /** Quantities with commas between them, each SI; NaN for each that is refused. */
    public List<Double> quantities(String place, String path, String text) {
        return Arrays.stream(text.split(",", -1))
                .map(part -> quantity(place, path, part.strip()))
                .toList();
    }

    /** One of the constants of a choice; empty when it is refused. Values as for {@link #quantity}. */
    public <E> Optional<E> choice(String place, String path, String text, E[] constants, Function<E, String> id) {
        Findings findings = Findings.ofNoFile(place, acceptedFields);
        Optional<E> chosen = Arrays.stream(constants)
                .filter(constant -> id.apply(constant).equals(text))
                .findFirst();
        if (chosen.isEmpty()) {
            findings.reportChoice(path, text, field(path).choices());
        }
        keep(findings);
        return chosen;
    }

    /** One of the words that there are, such as the ids of fluids. Values as for {@link #quantity}. */
    public void word(String place, String path, String text, Collection<String> words) {
        if (!words.contains(text)) {
            Findings findings = Findings.ofNoFile(place, acceptedFields);
            findings.reportChoice(path, text, words);
            keep(findings);
        }
    }

    /** Free text of a field. Values as for {@link #quantity}. */
    public void text(String place, String path, String text) {
        Findings findings = Findings.ofNoFile(place, acceptedFields);
        Section.text(path, field(path), typed(text), findings);
        keep(findings);
    }

    /** How many entries a list has; 0 when the number is refused. Values as for {@link #quantity}. */
    public int count(String place, String path, String text) {
        Findings findings = Findings.ofNoFile(place, acceptedFields);
        Field field = field(path);
        int count = 0;
        if (!text.matches("\\d{1,6}")) {
            findings.reportField(path, MessageKey.RIG_FIELD_TYPE, Shown.quoted(text), "a whole number");
        } else if (!field.allows(Integer.parseInt(text))) {
            Section.reportCount(path, MessageKey.RIG_LIST_LENGTH, Integer.parseInt(text), field, findings);
        } else {
            count = Integer.parseInt(text);
        }
        keep(findings);
        return count;
    }

    /** A fault that was found elsewhere. */
    public void refuse(Message fault) {
        faults.add(fault);
    }

    /** @throws InputRefusedException with every fault so far, when there is any */
    public void refuseFaults() {
        if (!faults.isEmpty()) {
            throw new InputRefusedException(faults);
        }
    }

    private void keep(Findings findings) {
        if (!findings.isClean()) {
            faults.addAll(findings.refusal().faults());
        }
    }

    private static JsonText typed(String text) {
        return new JsonText(text, new Position(1, 1));
    }

    private static Field field(String path) {
        return FieldCatalogue.find(path).orElseThrow(() -> new IllegalArgumentException("there is no field " + path));
    }
}
