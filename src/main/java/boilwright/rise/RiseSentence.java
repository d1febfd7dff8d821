package boilwright.rise;

import boilwright.errors.Sentences;

/**
 * Every sentence about a record. The number is how many values its pattern takes; the pattern stands in the bundle {@code
 * boilwright/text/rise.properties} under the name in lower case with hyphens.
 */
enum RiseSentence {
    /** {0} best estimate, {1} and {2} its interval. */
    RATE(3),
    /** {0} leak. */
    STEADY_LEAK(1),
    /** {0} leak, {1} gas at first. */
    MOSTLY_LEAK(2),
    /** {0} gas at first, {1} time constant. */
    GAS_TO_BALANCE(2),
    /** {0} gas at first, {1} time in which the rate halves. */
    GAS_BY_POWER_LAW(2),
    /** {0} gas at first, {1} time constant, {2} leak. */
    MOSTLY_GAS(3),
    /** {0} leak, {1} gas at first, {2} time constant. */
    BOTH(3),
    /** {0} most gas. */
    NO_RISE(1),
    FALLS(0),
    STEEPENS(0),
    PUMPED(0),
    /** {0} all gas at first, {1} how long to record. */
    SLOW_BEND(2),
    /** {0} number of readings. */
    TOO_FEW(1),
    STRAYS(0),
    UNCLEAR(0),
    /** {0} length of the record. */
    NOTE_STEADY_GAS(1),
    /** {0} time since the pumping began. */
    NOTE_POWER_LAW_NEAR(1),
    /** {0} greatest leak. */
    NOTE_LEAK_BELOW(1),
    /** {0} number of readings, {1} how many they count for. */
    NOTE_CORRELATED(2),
    /** {0} shortest time constant looked for. */
    NOTE_QUICK_BEND(1),
    /** {0} volume. */
    NOTE_VOLUME(1),
    NOTE_GAUGE(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.rise");

    private final int argumentCount;

    RiseSentence(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
