package boilwright.choice;

import boilwright.errors.Sentences;

/**
 * Every sentence about choosing. The number is how many values its pattern takes; the pattern stands in the bundle {@code
 * boilwright/text/choice.properties} under the name in lower case with hyphens.
 */
enum ChoiceText {
    // figures of a source
    FIGURE_RATED_POWER(0),
    FIGURE_CONTACT(0),
    FIGURE_TEMPERATURE(0),
    FIGURE_CONTACT_AREA(0),
    FIGURE_HEATED_AREA(0),
    // the power window
    /** {0} low, {1} high, {2} limit. */
    WINDOW(3),
    /** {0} low, {1} how far was looked. */
    WINDOW_OPEN_ABOVE(2),
    /** {0} limit, {1} power at which it is met, {2} power for full jets. */
    WINDOW_NONE(3),
    /** {0} what limits the source, {1} its cure. */
    WINDOW_SHORT(2),
    LIMIT_NO_STATE(0),
    // size
    /** {0} source, {1} ratio, {2} margin asked for. */
    SIZE_ENOUGH(3),
    /** {0} source, {1} ratio, {2} margin asked for. */
    SIZE_SHORT(3),
    /** {0} power, {1} margin. */
    SIZE_LEAST_POWER(2),
    /** {0} margin. */
    SIZE_NO_POWER(1),
    /** {0} figure, {1} value, {2} present value. */
    SIZE_INSTEAD(3),
    NOTE_SIZED_NOT_HELD(0),
    NOTE_SIZED_NOT_OFF(0),
    /** {0} percent. */
    NOTE_SIZED_AT_LEVEL(1),
    NOTE_SIZE_AREA(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.choice");

    private final int argumentCount;

    ChoiceText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** How many values the sentence takes. */
    int argumentCount() {
        return argumentCount;
    }

    /** The sentence before its values are put in. */
    String pattern() {
        return SENTENCES.pattern(this);
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
