package boilwright.units;

/** Text from outside as it may stand in a message: on one line, and not endless. */
final class Shown {
    private static final int LONGEST = 60;

    private Shown() {}

    /** The text with control characters as a question mark and, when long, its end left out. */
    static String of(String text) {
        String kept = text.length() > LONGEST ? text.substring(0, LONGEST) + "..." : text;
        return kept.replaceAll("\\p{C}", "?");
    }
}
