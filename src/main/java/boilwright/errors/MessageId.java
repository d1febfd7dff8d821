package boilwright.errors;

import java.util.Locale;

/** Names a sentence of the message bundle. Implemented by enums, one for each part of the program. */
public interface MessageId {
    /** Name of the constant. */
    String name();

    /** How many values the sentence takes. */
    int argumentCount();

    /** The sentence's key in the resource bundle. */
    default String bundleKey() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
