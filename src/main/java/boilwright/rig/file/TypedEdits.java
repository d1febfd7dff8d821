package boilwright.rig.file;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Rig;
import boilwright.units.NearestSpelling;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Edits that a person types one by one as {@code PATH=VALUE}, path and value as a rig file has them. Checked like a file and
 * refused with the same words, with the option and the path in the place of the file.
 */
public final class TypedEdits {
    private final String option;
    private final RigFields fields;
    private final List<Message> faults = new ArrayList<>();
    private final Map<String, String> values = new LinkedHashMap<>();

    private TypedEdits(String option, RigFields fields) {
        this.option = option;
        this.fields = fields;
    }

    /**
     * A rig with typed edits.
     *
     * @param rig the rig
     * @param option what the edits are typed after, as messages name it
     * @param texts the edits, in any order
     * @param fluidIds ids of the fluids that are known
     * @param acceptedFields paths of fields whose unusual values are meant as they are typed
     * @throws InputRefusedException with every fault found, when an edit names no field of the rig, names one twice, or is not
     *     accepted, or when the edited rig contradicts itself
     */
    public static Rig apply(
            Rig rig, String option, List<String> texts, Collection<String> fluidIds, Set<String> acceptedFields) {
        if (texts.isEmpty()) {
            return rig;
        }
        TypedEdits typed = new TypedEdits(option, RigFields.of(rig));
        texts.forEach(typed::take);
        if (!typed.faults.isEmpty()) {
            throw new InputRefusedException(typed.faults);
        }
        List<RigEdit> edits = new ArrayList<>();
        typed.values.forEach((path, value) -> edits.add(edit(path, value)));
        return typed.fields.with(edits).rig(fluidIds, option, acceptedFields);
    }

    private static RigEdit edit(String path, String value) {
        boolean list =
                !path.endsWith("]") && FieldCatalogue.find(path).orElseThrow().kind() == Field.Kind.TEXT_LIST;
        if (!list) {
            return RigEdit.of(path, value);
        }
        List<String> texts = Arrays.stream(value.split(","))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
        return new RigEdit(path, new RigEdit.Texts(texts));
    }

    private void take(String text) {
        int equals = text.indexOf('=');
        String path = equals < 0 ? "" : text.substring(0, equals).strip();
        if (path.isEmpty()) {
            faults.add(Message.of(MessageKey.RIG_EDIT_FORM, option, Shown.plain(text)));
            return;
        }
        String value = text.substring(equals + 1).strip();
        Optional<Message> unknown = unknown(path);
        if (unknown.isPresent()) {
            faults.add(unknown.get());
            return;
        }
        String first = values.putIfAbsent(path, value);
        if (first != null) {
            faults.add(Message.of(MessageKey.RIG_EDIT_DOUBLED, place(path), Shown.quoted(first), Shown.quoted(value)));
        }
    }

    private String place(String path) {
        return option + " " + Shown.plain(path);
    }

    /** Why a path leads to no field of the rig; empty when it does, also to one that the rig's file may have and has not. */
    private Optional<Message> unknown(String path) {
        String at = "";
        String[] steps = path.split("\\.", -1);
        for (int i = 0; i < steps.length; i++) {
            String step = steps[i];
            int bracket = step.indexOf('[');
            String name = bracket < 0 ? step : step.substring(0, bracket);
            List<Field> known = FieldCatalogue.children(at);
            Optional<Field> field =
                    known.stream().filter(one -> one.name().equals(name)).findFirst();
            String here = at.isEmpty() ? name : at + "." + name;
            if (field.isEmpty()) {
                return Optional.of(unknown(path, here, name, known));
            }
            boolean list = field.get().kind() == Field.Kind.LIST || field.get().kind() == Field.Kind.TEXT_LIST;
            boolean last = i == steps.length - 1;
            if (bracket < 0 ? list && !last : !list || !isEntry(here, step.substring(bracket))) {
                return Optional.of(entries(path, here, list));
            }
            at = bracket < 0 ? here : here + step.substring(bracket);
        }
        return Optional.empty();
    }

    private boolean isEntry(String list, String brackets) {
        return brackets.matches("\\[\\d{1,6}]")
                && Integer.parseInt(brackets.substring(1, brackets.length() - 1)) < fields.count(list);
    }

    private Message unknown(String path, String here, String name, List<Field> known) {
        Optional<String> now = Migrations.pathNow(FieldCatalogue.general(path));
        if (now.isPresent()) {
            return Message.of(MessageKey.RIG_FIELD_MOVED, place(path), Shown.plain(here), now.get());
        }
        List<String> names = known.stream().map(Field::name).toList();
        return NearestSpelling.of(name, names)
                .map(near -> Message.of(
                        MessageKey.RIG_FIELD_UNKNOWN_NEAR, place(path), Shown.plain(here), Shown.list(names), near))
                .orElseGet(() ->
                        Message.of(MessageKey.RIG_FIELD_UNKNOWN, place(path), Shown.plain(here), Shown.list(names)));
    }

    private Message entries(String path, String here, boolean list) {
        int count = list ? fields.count(here) : 0;
        if (!list) {
            return Message.of(MessageKey.RIG_EDIT_NO_LIST, place(path), here);
        }
        return count == 0
                ? Message.of(MessageKey.RIG_EDIT_EMPTY_LIST, place(path), here)
                : Message.of(
                        MessageKey.RIG_EDIT_ENTRY,
                        place(path),
                        here,
                        Integer.toString(count),
                        here + "[0]",
                        here + "[" + (count - 1) + "]");
    }
}
