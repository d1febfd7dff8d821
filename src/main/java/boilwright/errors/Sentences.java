package boilwright.errors;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/**
 * Whole sentences of one resource bundle, found by the constants of an enum: the bundle's key is the constant's name in
 * lower case with hyphens.
 */
public final class Sentences {
    private final ResourceBundle bundle;

    /** @param baseName the bundle, such as {@code boilwright.text.answers} */
    public Sentences(String baseName) {
        bundle = ResourceBundle.getBundle(baseName, Locale.ROOT);
    }

    /** How the bundle spells a constant. */
    public static String bundleKey(Enum<?> key) {
        return key.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * The sentence with its values; their number must be the one the constant states.
     *
     * @throws java.util.MissingResourceException when the bundle has no such sentence
     */
    public String say(Enum<?> key, int argumentCount, String... values) {
        if (values.length != argumentCount) {
            throw new IllegalArgumentException(key + " takes " + argumentCount + " values, not " + values.length);
        }
        return new MessageFormat(bundle.getString(bundleKey(key)), Locale.ROOT).format(values);
    }
}
