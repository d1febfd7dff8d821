package boilwright.rig;

import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The titles and explanations of the fields, for tooltips, messages and the published schema. */
public final class FieldTexts {
    private static final ResourceBundle TEXT = ResourceBundle.getBundle("boilwright.text.fields", Locale.ROOT);

    private FieldTexts() {}

    /**
     * What the field is called, in a few words.
     *
     * @throws MissingResourceException when the bundle lacks it (a test looks for that)
     */
    public static String title(Field field) {
        return TEXT.getString(field.textKey() + ".title");
    }

    /**
     * What the field means, in one or two sentences.
     *
     * @throws MissingResourceException when the bundle lacks it (a test looks for that)
     */
    public static String explanation(Field field) {
        return TEXT.getString(field.textKey() + ".explanation");
    }
}
