package boilwright.rig.file;

import java.util.Collection;
import java.util.stream.Collectors;

/** Puts what was found in a file into a message: cut to a length that can be read, nothing that a terminal would obey. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** A text in quotation marks. */
    static String quoted(String found) {
        return '"' + plain(found) + '"';
    }

    /** A text as it is. */
    static String plain(String found) {
        String cut = found.length() <= LONGEST ? found : found.substring(0, LONGEST) + "...";
        return printable(cut);
    }

    /** The name of a file, however long. */
    static String printable(String text) {
        return text.codePoints()
                .map(c -> isPrintable(c) ? c : '?')
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /** Words that are accepted, as a list in a sentence. */
    static String list(Collection<String> words) {
        return String.join(", ", words);
    }

    /** Texts that are accepted, in quotation marks. */
    static String quotedList(Collection<String> words) {
        return words.stream().map(Shown::quoted).collect(Collectors.joining(", "));
    }

    /** Whether a terminal shows the character and does nothing else with it. */
    static boolean isPrintable(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
