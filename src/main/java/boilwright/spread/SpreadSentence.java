package boilwright.spread;

import boilwright.errors.Sentences;

/**
 * Every sentence of this package. The number is how many values its pattern takes; the pattern stands in the bundle {@code
 * boilwright/text/spread.properties} under the name in lower case with hyphens.
 */
enum SpreadSentence {
    // where ranges come from
    SOURCE_GUESS(0),
    SOURCE_GIVEN(0),
    // verdicts
    /** {0} samples with an answer. */
    VERDICT_NONE_FAILS(1),
    /** {0} samples with an answer, {1} margin that fails most often. */
    VERDICT_ALL_FAIL(2),
    /** {0} share without a failing margin, {1} its low and {2} its high end, {3} samples, {4} margin that fails most often, {5} how often. */
    VERDICT_SOME_FAIL(6),
    /** {0} samples: none gave an answer. */
    VERDICT_NO_ANSWER(1),
    /** {0} how often it comes, {1} samples, {2} median, {3} low, {4} high. */
    VERDICT_TIME(5),
    /** {0} how often it comes. */
    VERDICT_TIME_NEVER(1),
    NEVER(0),
    /** {0} samples done, {1} samples asked for. */
    /** {0} assumed values, {1} samples with full jets, {2} samples, {3} what that means. */
    CERTAINTY(4),
    CERTAINTY_WILL(0),
    CERTAINTY_WILL_NOT(0),
    CERTAINTY_CANNOT_TELL(0),
    VERDICT_PARTIAL(2),
    /** {0} samples without an answer, {1} samples. */
    VERDICT_REJECTED(2),
    // what to measure first
    /** {0} margin, {1} input, {2} its share, {3} low, {4} high, {5} how often the margin fails. */
    MEASURE_FIRST(6),
    /** {0} margin, {1} input, {2} its share, {3} second input, {4} its share, {5} how often the margin fails. */
    MEASURE_SEVERAL(6),
    /** {0} margin, {1} how often it fails. */
    MEASURE_NONE_STANDS_OUT(2),
    /** {0} margin, {1} its cure. */
    MEASURE_NO_HELP(2),
    /** {0} margin. */
    MEASURE_CONSTANT(1),
    /** {0} margin, {1} how many samples are needed. */
    MEASURE_TOO_FEW(2),
    FAILS_NEVER(0),
    /** {0} share. */
    FAILS_IN(1),
    // assumptions
    /** {0} number of inputs. */
    NOTE_INPUTS(1),
    NOTE_EXACT(0),
    /** {0} ids of the defaults. */
    NOTE_SET_BY_RIG(1),
    NOTE_RANKING(0),
    NOTE_ERROR(0),
    NOTE_MANY(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.spread");

    private final int argumentCount;

    SpreadSentence(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
