package boilwright.errors;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A sentence of the messages by its key and values: a test asks for these, and its words stand in the bundle alone. */
public final class Said {
    private static final String PLACE = "here";

    private Said() {}

    /** The whole sentence. */
    public static String said(MessageKey key, String... values) {
        return Message.of(key, values).text();
    }

    /** The sentence after the place at which it stands, for one that begins with a place. */
    public static String saidThere(MessageKey key, String... values) {
        List<String> all = new ArrayList<>(List.of(PLACE));
        all.addAll(Arrays.asList(values));
        String whole = new Message(key, all).text();
        if (!whole.startsWith(PLACE + ": ")) {
            throw new IllegalArgumentException(key + " begins with no place");
        }
        return whole.substring(PLACE.length() + 2);
    }
}
