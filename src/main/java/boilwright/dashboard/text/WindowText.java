package boilwright.dashboard.text;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The words of the window, from the bundle {@code boilwright/text/window.properties}. */
public final class WindowText {
    private static final ResourceBundle TEXT = ResourceBundle.getBundle("boilwright.text.window", Locale.ROOT);

    private WindowText() {}

    /**
     * The text of a key with values put in.
     *
     * @param key the key
     * @param values texts, in the order of the pattern
     * @throws MissingResourceException when the bundle lacks it
     */
    public static String say(String key, String... values) {
        return new MessageFormat(TEXT.getString(key), Locale.ROOT).format(values);
    }
}
