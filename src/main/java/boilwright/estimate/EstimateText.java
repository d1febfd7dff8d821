package boilwright.estimate;

import boilwright.errors.Sentences;

/**
 * Every sentence of this package. The number is how many values its pattern takes; the pattern stands in the bundle {@code
 * boilwright/text/estimate.properties} under the name in lower case with hyphens.
 */
enum EstimateText {
    /** {0} bore, {1} material. */
    NAME_OF_RIG(2),
    // what guesses rest on
    BASIS_BOILER_WALL(0),
    BASIS_HEATED_PLAN(0),
    BASIS_HEATED_MANTLE(0),
    BASIS_WETTED(0),
    BASIS_OUTSIDE(0),
    BASIS_EMISSIVITY(0),
    BASIS_BARE(0),
    BASIS_INSULATION(0),
    BASIS_COLUMN_WALL(0),
    BASIS_COLUMN_METAL(0),
    BASIS_STAGE_HEIGHT(0),
    BASIS_THROAT_DIAMETER(0),
    BASIS_THROAT_GAP(0),
    BASIS_LOWER_WALL(0),
    BASIS_CONTACT(0),
    BASIS_CONTACT_AREA(0),
    BASIS_CONDUCTANCE(0),
    BASIS_CONDUCTANCE_SOLVED(0),
    BASIS_HEAT_CAPACITY(0),
    BASIS_SOURCE_LIMIT(0),
    BASIS_THERMOSTAT(0),
    BASIS_LOSS_AREA(0),
    BASIS_ELEMENT_LOAD(0),
    BASIS_SUSCEPTOR(0),
    BASIS_EFFICIENCY(0),
    BASIS_FORELINE(0),
    BASIS_WATER_INLET(0),
    BASIS_WATER_FLOW(0),
    BASIS_COOLING_ELEMENT(0),
    BASIS_ROOM(0),
    BASIS_AIR_PRESSURE(0),
    // notes
    /** {0} top gap, {1} net heat, {2} its low end, {3} its high end, {4} boiler pressure. */
    NOTE_THROATS_WORKS_AT(5),
    /** {0} top gap, {1} net heat, {2} trade power, {3} and {4} its usual ends, {5} boiler pressure. */
    NOTE_THROATS_TRADE(5),
    /** {0} top gap, {1} net heat, {2} boiler pressure, {3} nameplate, {4} and {5} what it leaves open. */
    NOTE_THROATS_NAMEPLATE(6),
    NOTE_RATING_SAYS_NOTHING(0),
    /** {0} net heat, {1} boiler pressure, {2} heat needed. */
    NOTE_NARROWEST(3),
    /** {0} net heat, {1} boiler pressure, {2} heat needed. */
    NOTE_WIDEST(3),
    /** {0} contact conductance, {1} the usual one, {2} the power at which the pump is said to work. */
    NOTE_CONTACT(3),
    NOTE_NO_CAP(0),
    NOTE_FULL_POWER(0),
    // which guess matters
    /** {0} number of guesses, {1} field, {2} low, {3} high, {4} ratio at low, {5} ratio at high. */
    RANKING_MOST(6),
    RANKING_DECIDES(0),
    /** {0} number of guesses. */
    RANKING_NONE_MOVES(1),
    RANKING_NO_GUESSES(0),
    RATIO_UNKNOWN(0),
    /** {0} number of guesses. */
    REMINDER(1);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.estimate");

    private final int argumentCount;

    EstimateText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
