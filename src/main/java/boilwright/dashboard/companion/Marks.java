package boilwright.dashboard.companion;

import boilwright.companion.Outcome;

/** Marks before words, so that colour is never the only sign. */
final class Marks {
    private Marks() {}

    static String marked(Outcome outcome) {
        return mark(outcome) + "  " + outcome.words();
    }

    private static String mark(Outcome outcome) {
        return switch (outcome.kind()) {
            case DONE -> "o";
            case WARNED -> "^";
            case REFUSED -> "x";
        };
    }
}
