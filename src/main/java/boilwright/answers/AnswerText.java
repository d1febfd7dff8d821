package boilwright.answers;

import boilwright.errors.Sentences;

/**
 * Every sentence of an answer. The number is how many values its pattern takes; the pattern stands in the bundle {@code
 * boilwright/text/answers.properties} under the name in lower case with hyphens.
 */
enum AnswerText {
    // titles of margins
    TITLE_HEAT(0),
    TITLE_JETS(0),
    TITLE_BOILER_PRESSURE(0),
    TITLE_OIL_BULK(0),
    TITLE_OIL_FILM(0),
    TITLE_GLASS_BOILER(0),
    TITLE_GLASS_BODY(0),
    TITLE_SOURCE(0),
    TITLE_COLUMN_MACH(0),
    TITLE_SUPERHEAT(0),
    TITLE_LIQUID(0),
    TITLE_WATER_OUT(0),
    TITLE_WATER_IN(0),
    TITLE_WATER_FLOW(0),
    TITLE_CHILLER(0),
    TITLE_FILM_MARGIN(0),
    TITLE_CAP(0),
    TITLE_FORELINE(0),
    TITLE_OIL_LOSS(0),
    TITLE_FUEL(0),
    TITLE_CARTRIDGE(0),
    // moments
    MOMENT_REST(0),
    MOMENT_WARMUP(0),
    MOMENT_SESSION(0),
    MOMENT_STOP(0),
    /** {0} margin, {1} moment. */
    MARGIN_WHEN(2),
    REMEDY_LEVEL(0),
    /** {0} rating. */
    REMEDY_RATING(1),
    /** {0} conductance, {1} how it may be had. */
    REMEDY_CONTACT(2),
    // sessions: {0} the session, {1} the longest that holds
    SESSION_NO_END(1),
    SESSION_NONE(1),
    SESSION_HOLDS(2),
    SESSION_TOO_LONG(2),
    SESSION_A_DAY(0),
    BASIS_OIL_WILD(0),
    BASIS_CARTRIDGE(0),
    CURE_CARTRIDGE(0),
    // where limits come from
    /** {0} heat needed, {1} jet, {2} boiler pressure, {3} wanted ratio. */
    BASIS_HEAT(4),
    BASIS_JETS(0),
    /** {0} fluid. */
    BASIS_BOILER_PRESSURE_FLUID(1),
    BASIS_BOILER_PRESSURE_RIG(0),
    /** {0} foreline pressure. */
    BASIS_BOILER_PRESSURE_FORELINE(1),
    /** {0} fluid. */
    BASIS_OIL_BULK(1),
    /** {0} fluid. */
    MISSING_OIL_BULK(1),
    /** {0} fluid. */
    BASIS_OIL_FILM(1),
    /** {0} fluid, {1} temperature of the inner face. */
    MISSING_OIL_FILM(2),
    BASIS_GLASS(0),
    BASIS_COLUMN_MACH(0),
    BASIS_SUPERHEAT(0),
    BASIS_LIQUID(0),
    BASIS_WATER_OUT(0),
    BASIS_WATER_IN(0),
    BASIS_WATER_FLOW(0),
    BASIS_CHILLER(0),
    /** {0} water, {1} room. */
    BASIS_CHILLER_CURVE(2),
    MISSING_CHILLER(0),
    BASIS_FILM_MARGIN(0),
    BASIS_CAP(0),
    /** {0} share of the pressure before the lowest jet. */
    BASIS_FORELINE(1),
    BASIS_OIL_LOSS(0),
    BASIS_FUEL(0),
    BASIS_USER(0),
    // cures
    CURE_JETS(0),
    CURE_BOILER_PRESSURE(0),
    CURE_OIL_BULK(0),
    CURE_OIL_FILM(0),
    CURE_GLASS_BOILER(0),
    CURE_GLASS_BODY(0),
    CURE_SOURCE(0),
    CURE_COLUMN_MACH(0),
    CURE_SUPERHEAT(0),
    CURE_LIQUID(0),
    CURE_WATER_OUT(0),
    CURE_WATER_IN_WARM(0),
    NOTE_WATER_COLD(0),
    CURE_WATER_FLOW(0),
    CURE_CHILLER(0),
    CURE_FILM_MARGIN(0),
    CURE_CAP(0),
    CURE_FORELINE(0),
    CURE_OIL_LOSS(0),
    CURE_FUEL(0),
    // what limits the heat, and what would cure it
    /** {0} fuel power, {1} share of it that reaches the boiler in percent. */
    LIMIT_FLAME_WIDE(2),
    CURE_FLAME_WIDE(0),
    /** {0} fuel power. */
    LIMIT_FLAME_SMALL(1),
    CURE_FLAME_SMALL(0),
    /** {0} source, {1} its limit, {2} contact conductance, {3} contact. */
    LIMIT_CONTACT(4),
    CURE_CONTACT(0),
    CURE_CONTACT_WRAPPED(0),
    /** {0} source, {1} rating, {2} loss. */
    LIMIT_RATING(3),
    CURE_RATING(0),
    /** {0} level in percent. */
    LIMIT_LEVEL(1),
    CURE_LEVEL(0),
    LIMIT_NOT_FERROUS(0),
    CURE_NOT_FERROUS(0),
    LIMIT_OFF(0),
    CURE_OFF(0),
    /** {0} source, {1} the most it gives, {2} heat needed. */
    LIMIT_RATING_SMALL(3),
    CURE_RATING_SMALL(0),
    /** {0} source, {1} its limit, {2} temperature of the boiler's face for full jets. */
    LIMIT_TOO_COLD(3),
    CURE_TOO_COLD(0),
    /** {0} source, {1} its limit, {2} drop through the wall, {3} drop over the contact. */
    LIMIT_WALL(4),
    CURE_WALL(0),
    CONTACT_MACHINED_METAL(0),
    CONTACT_FLAT_GLASS(0),
    CONTACT_DOMED_GLASS(0),
    CONTACT_MANTLE(0),
    // verdicts
    /** {0} source, {1} the jets. */
    VERDICT_ALL_FULL(2),
    /** {0} full, {1} all, {2} working. */
    VERDICT_NOT_FULL(3),
    /** {0} heat into the boiler now, {1} at the temperature that full jets need, {2} required. */
    VERDICT_HEAT(3),
    /** {0} what limits the source. */
    ROOT_HEAT(1),
    /** {0} share of the charge left, {1} heat into the boiler, {2} required. */
    ROOT_TOO_HOT(3),
    /** {0} share of the charge left. */
    ROOT_OIL(1),
    /** {0} foreline, {1} what the lowest jet bears. */
    ROOT_FORELINE(2),
    ROOT_COOLING(0),
    ROOT_COLUMN(0),
    VERDICT_FULL_AT_REST_ONLY(0),
    /** {0} jets. */
    VERDICT_FULL_IN_WARMUP_ONLY(1),
    THE_JET(0),
    BOTH_JETS(0),
    /** {0} number. */
    ALL_JETS(1),
    /** {0} watts, {1} water, {2} room. */
    CURE_CHILLER_LARGER(3),
    /** {0} set point, {1} watts. */
    CURE_CHILLER_WARMER(2),
    /** {0} set point, {1} watts. */
    CURE_CHILLER_WARMER_NOT(2),
    /** {0} room. */
    CURE_CHILLER_ROOM(1),
    /** {0} heat less, {1} duty less. */
    CURE_CHILLER_POWER(2),
    WATER_NOTE_FLOW(0),
    WATER_NOTE_PLAIN(0),
    /** {0} inlet, {1} percent humidity. */
    WATER_NOTE_DEW(2),
    WATER_NOTE_LOADS(0),
    /** {0} heat to air. */
    WATER_VERDICT_FAN(1),
    WATER_VERDICT_NONE(0),
    /** {0} heat into the water now, {1} with full jets. */
    WATER_VERDICT_FULL_JETS(2),
    /** {0} flow, {1} heat, {2} in, {3} out. */
    WATER_VERDICT_FLOW(4),
    /** {0} flow, {1} limit. */
    WATER_VERDICT_LEAST(2),
    /** {0} limit. */
    WATER_VERDICT_NO_FLOW(1),
    /** {0} capacity, {1} duty, {2} what is missing. */
    WATER_VERDICT_SHORT(3),
    /** {0} temperature. */
    WATER_VERDICT_SETTLES(1),
    /** {0} capacity, {1} duty at rest, {2} highest duty. */
    WATER_VERDICT_PEAK(3),
    /** {0} capacity, {1} duty. */
    WATER_VERDICT_TIGHT(2),
    /** {0} capacity, {1} duty. */
    WATER_VERDICT_ENOUGH(2),
    /** {0} time from heat-on. */
    VERDICT_TIME(1),
    /** {0} titles. */
    VERDICT_FAILING(1),
    VERDICT_TIGHT(1),
    /** {0} titles. */
    VERDICT_ELSEWHERE(1),
    VERDICT_NO_MARGIN_FAILS(0),
    /** {0} time of heat-on, {1} time of full pumping, {2} time between. */
    VERDICT_WARMUP(3),
    /** {0} source, {1} lit, {2} all jets. */
    VERDICT_WARMUP_NEVER(3),
    /** {0} jets gone, {1} air, {2} water and backing. */
    VERDICT_COOLDOWN(3),
    /** {0} air, {1} water and backing. */
    VERDICT_COOLDOWN_NOTHING_LIT(2),
    /** {0} jets gone, {1} water and backing. */
    VERDICT_COOLDOWN_NO_AIR_LIMIT(2),
    VERDICT_COOLDOWN_OPEN(0),
    // what to do
    DO_HEAT_OFF(0),
    DO_GAS_OFF(0),
    DO_SHUT_VALVE(0),
    /** {0} temperature of the body. */
    DO_WATER_BACK(1),
    DO_KEEP_WATER(0),
    DO_SHUT_BACKING(0),
    /** {0} temperature of the oil, {1} time after heat-off. */
    DO_NO_AIR_UNTIL(2),
    /** {0} temperature of the oil. */
    DO_NO_AIR(1),
    // cautions
    /** {0} fluid, {1} temperature. */
    CAUTION_AIR_BURNS(2),
    /** {0} fluid, {1} temperature. */
    CAUTION_AIR_SPOILS(2),
    /** {0} fluid. */
    CAUTION_AIR_UNKNOWN(1),
    CAUTION_FLAME(0),
    CAUTION_GLASS(0),
    CAUTION_JACKET(0),
    CAUTION_COIL(0),
    /** {0} hottest face. */
    CAUTION_TOUCH(1),
    CAUTION_MERCURY(0),
    CAUTION_BACKING(0),
    CAUTION_CODES(0),
    CAUTION_AFTER_HEAT(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.answers");

    private final int argumentCount;

    AnswerText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
