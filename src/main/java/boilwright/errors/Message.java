package boilwright.errors;

import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * One sentence for a person: a key and the values that show exactly what was found and what would be accepted.
 *
 * @param key which sentence
 * @param arguments the values put into it, in the order the key's pattern names them; texts, so that numbers are
 *     formatted (with their unit) where they are known
 */
public record Message(MessageKey key, List<String> arguments) {
    private static final ResourceBundle TEXT = ResourceBundle.getBundle("boilwright.text.messages", Locale.ROOT);

    public Message {
        arguments = List.copyOf(arguments);
        if (arguments.size() != key.argumentCount()) {
            throw new IllegalArgumentException(
                    key + " takes " + key.argumentCount() + " values, not " + arguments.size());
        }
    }

    /** A message from a key and its values, in the order of the pattern. */
    public static Message of(MessageKey key, String... arguments) {
        return new Message(key, List.of(arguments));
    }

    /** The whole sentence. */
    public String text() {
        return new MessageFormat(pattern(key), Locale.ROOT).format(arguments.toArray());
    }

    /**
     * The pattern of a key as it stands in the bundle.
     *
     * @throws MissingResourceException when the bundle has no such sentence (a test looks for that)
     */
    static String pattern(MessageKey key) {
        return TEXT.getString(key.bundleKey());
    }

    @Override
    public String toString() {
        return text();
    }
}
