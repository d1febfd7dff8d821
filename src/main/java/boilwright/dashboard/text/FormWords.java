package boilwright.dashboard.text;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Messages about fields of a rig file, said of a form: there the place in a file means nothing, and a field is known by its
 * title.
 */
public final class FormWords {
    private static final String PREFIX = "RIG_";

    private FormWords() {}

    /** The message without the place in a file and with the title of its field. */
    public static String of(Message message) {
        Optional<Field> field = field(message);
        return field.isEmpty() ? message.text() : of(message, FieldTexts.title(field.get()));
    }

    /** The message without the place in a file and with this title for its field. */
    public static String of(Message message, String title) {
        if (field(message).isEmpty()) {
            return message.text();
        }
        List<String> values = new ArrayList<>(message.arguments());
        values.set(0, "");
        values.set(1, title);
        return said(message.key(), values).replaceFirst("^\\s*:\\s*", "");
    }

    /** The message with its place in a file, without words that only a command line understands. */
    public static String inFile(Message message) {
        return said(message.key(), message.arguments());
    }

    private static String said(MessageKey key, List<String> values) {
        String[] all = values.toArray(String[]::new);
        if (key == MessageKey.RIG_FIELD_SLIP) {
            return WindowText.say("text.slip", all);
        }
        return key == MessageKey.RIG_FIELD_QUANTITY_SLIP
                ? WindowText.say("text.quantity-slip", all)
                : new Message(key, values).text();
    }

    private static Optional<Field> field(Message message) {
        boolean mayBe =
                message.key().name().startsWith(PREFIX) && message.arguments().size() >= 2;
        return mayBe ? FieldCatalogue.find(message.arguments().get(1)) : Optional.empty();
    }
}
