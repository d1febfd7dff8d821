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
    NOTE_SIZE_AREA(0),
    // does a source go with a boiler
    FIT_CLAMP_ON_GLASS(0),
    FIT_IMMERSED(0),
    FIT_METAL_CONTACT(0),
    FIT_GLASS_CONTACT(0),
    FIT_FLAT_BOTTOM(0),
    FIT_DOMED_BOTTOM(0),
    FIT_SMALL_MANTLE(0),
    // rows of a comparison
    /** {0} source, {1} rated power. */
    PRESENT_TITLE(2),
    /** {0} why not. */
    NO_ANSWER(1),
    /** {0} ratio, {1} time, {2} percent held. */
    ROW_ENOUGH(3),
    /** {0} ratio, {1} time, {2} margins passed, {3} percent held. */
    ROW_TURN_DOWN(4),
    /** {0} ratio, {1} what limits it. */
    ROW_TIGHT(2),
    /** {0} ratio, {1} margins passed. */
    ROW_OVER(2),
    /** {0} full, {1} all jets, {2} ratio, {3} what limits it. */
    ROW_SHORT(4),
    /** {0} the present source, {1} its row's sentence. */
    COMPARE_PRESENT(2),
    /** {0} how many are enough, {1} of how many. */
    COMPARE_COUNT(2),
    COMPARE_NONE(0),
    COMPARE_KEEP(0),
    /** {0} source, {1} its row's sentence. */
    COMPARE_BEST(2),
    NOTE_COMPARE_FULL(0),
    /** {0} pumping time. */
    NOTE_COMPARE_SESSION(1),
    /** {0} heated area. */
    NOTE_COMPARE_BASE(1),
    NOTE_COMPARE_RULE(0),
    NOTE_COMPARE_GENERIC(0),
    // the same rig with other fluids
    /** {0} full, {1} all jets, {2} ratio. */
    FLUID_SHORT(3),
    /** {0} ratio, {1} time. */
    FLUID_FULL(2),
    /** {0} ratio, {1} time, {2} margins passed. */
    FLUID_PASSES(3),
    /** {0} charge. */
    NOTE_FLUIDS_SAME(1),
    NOTE_FLUIDS_PRESSURE(0),
    /** {0} pressure. */
    NOTE_FLUIDS_PRESSURE_RIG(1),
    NOTE_FLUIDS_CHARGE(0),
    NOTE_FLUIDS_ULTIMATE(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.choice");

    private final int argumentCount;

    ChoiceText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
