package boilwright.answers;

import boilwright.errors.Sentences;

/**
 * Every sentence about the gas side. The number is how many values its pattern takes; the pattern stands in {@code
 * boilwright/text/vacuum.properties} under the name in lower case with hyphens.
 */
public enum VacuumText {
    TITLE_GAUGE(0),
    TITLE_THROUGHPUT(0),
    TITLE_OVERLOAD(0),
    TITLE_OIL_VAPOUR(0),
    TITLE_LOWEST_TRUSTED(0),
    BASIS_TARGET(0),
    BASIS_NO_TARGET(0),
    BASIS_THROUGHPUT(0),
    BASIS_OVERLOAD(0),
    BASIS_TRUSTED(0),
    CURE_GAUGE(0),
    CURE_THROUGHPUT(0),
    CURE_OVERLOAD(0),
    CURE_TRUSTED(0),
    VERDICT_SETTLES(3),
    /** {0} pressure with every jet full. */
    VERDICT_WITH_JETS(1),
    /** {0} source, {1} its share, {2} what the line leaves of the pump's speed. */
    VERDICT_SOURCE(3),
    VERDICT_SOURCE_DARK(2),
    BLAME_HEAT(0),
    BLAME_GAS(0),
    BLAME_GAS_WITH_FULL_JETS(0),
    BLAME_EITHER(0),
    /** {0} pressure with both. */
    BLAME_BOTH(1),
    BLAME_BOTH_AND_MORE(1),
    STAGE_NOW(0),
    STAGE_BEST_CHANGE(0),
    STAGE_JETS_FULL(0),
    STAGE_BOTH(0),
    VERDICT_OVERLOADED(2),
    VERDICT_ULTIMATE(0),
    VERDICT_FIX(3),
    VERDICT_NEXT_CHANGE(3),
    VERDICT_TARGET_MET(1),
    VERDICT_TARGET_MISSED(1),
    NAME_SURFACE(1),
    NAME_SEAL(1),
    NAME_PIECE(1),
    NAME_LEAK(1),
    NAME_BACK_DIFFUSION(0),
    NAME_OIL_VAPOUR(0),
    NAME_BACKING(0),
    /** {0} name, {1} number. */
    NAME_NUMBERED(2),
    FIX_CLEAN(1),
    FIX_CLEAN_WIDE(2),
    FIX_WIDE(2),
    FIX_SHORT(1),
    FIX_WITHOUT(1),
    FIX_SEAL(1),
    FIX_LEAK(1),
    FIX_DRY(0),
    FIX_BAKE(1),
    FIX_WAIT(0),
    FIX_BACKING(0),
    CROSSOVER_THROUGH(2),
    CROSSOVER_AT(4),
    CROSSOVER_NEVER(1),
    CROSSOVER_UNKNOWN(1),
    CAUTION_GLASS(0),
    CAUTION_AIR(0),
    NOTE_GAS(1),
    NOTE_BAKED(1),
    NOTE_SPREAD(0),
    NOTE_FORELINE_SHUT(0),
    NOTE_OIL_WARM(1);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.vacuum");

    private final int argumentCount;

    VacuumText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    public String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
