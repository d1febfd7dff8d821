package boilwright.drill;

import boilwright.errors.Sentences;

/**
 * Every sentence of the drills. The number is how many values its pattern takes; the pattern stands in {@code
 * boilwright/text/drill.properties}.
 */
enum DrillSentence {
    FAULT_WATER(0),
    FAULT_MAINS(0),
    FAULT_HEATER_STUCK(0),
    FAULT_BACKING(0),
    FAULT_CARTRIDGE_EMPTY(0),
    FAULT_AIR_INLET(0),
    FAULT_CHILLER_TRIP(0),
    FAULT_FAN(0),
    LIMIT_FILM(0),
    LIMIT_CAP(0),
    LIMIT_WATER_BOILS(0),
    LIMIT_COLD_SHOCK(0),
    LIMIT_OIL(0),
    LIMIT_OIL_LOSS(0),
    LIMIT_FORELINE(0),
    LIMIT_TOUCH(0),
    KIND_BOILER_TEMPERATURE(0),
    KIND_BODY_TEMPERATURE(0),
    KIND_WATER_TEMPERATURE(0),
    KIND_WATER_FLOW(0),
    KIND_FORELINE_PRESSURE(0),
    /** {0} how long it was watched. */
    NOTHING_HEAT_ON(1),
    /** {0} how long it was watched. */
    NOTHING(1),
    /** {0} limit, {1} time. */
    AFTER(2),
    /** {0} what happens after what time. */
    HEAT_ON(1),
    /** {0} what happens after what time. */
    THEN(1),
    /** {0} time. */
    BROKEN_OFF(1),
    /** {0} first, {1} last. */
    JETS(2),
    /** {0} first. */
    JETS_SOME(1),
    /** {0} delay, {1} limit. */
    DELAY(2),
    /** {0} limits. */
    NOT_KEPT(1),
    /** {0} what the trip watches, {1} set point, {2} time. */
    ACTS_TRIP(3),
    ACTS_TRIP_NONE(0),
    ACTS_NO_TRIPS(0),
    ACTS_HEAT_ENDS(0),
    ACTS_FLAME_BURNS(0),
    ACTS_FLAME_OUT(0),
    ACTS_TAP(0),
    /** {0} what it keeps, {1} time. */
    ACTS_BATTERY(2),
    KEEPS_WATER(0),
    KEEPS_BACKING_PUMP(0),
    KEEPS_FAN(0),
    FIRST_PLUG(0),
    FIRST_SWITCH_OFF(0),
    FIRST_OPENING(0),
    FIRST_TAP(0),
    FIRST_CARTRIDGE(0),
    CAUTION_CLOSED(0),
    CAUTION_FLAME(0),
    CAUTION_AIR(0),
    CAUTION_SUCK_BACK(0),
    CAUTION_RESTART(0),
    /** {0} time. */
    NOTE_AT(1),
    NOTE_AS_HELD(0),
    /** {0} rating. */
    PLAYED_WITH(1),
    NOT_PLAYED_DARK(0),
    BEFORE_FAULT(1),
    NOTE_STUCK(0),
    NOTE_STANDS(0),
    NOTE_BACKING(0),
    /** {0} bore, {1} pressure. */
    NOTE_AIR(2),
    NOTE_GIVEN_FLOW(0),
    NOTE_FORELINE_GIVEN(0),
    NOTE_FAN(0),
    /** {0} time. */
    NOTE_WATCHED(1),
    NOTE_LIMITS(0),
    NOTE_TRIPS(0),
    BATTERY_NONE_NEEDED(0),
    /** {0} time. */
    BATTERY_NEEDED(1),
    BATTERY_NO_HELP(0),
    /** {0} number of faults. */
    SET_NONE(1),
    /** {0} number of faults, {1} how many harm, {2} which. */
    SET_SOME(3),
    /** {0} fault, {1} time until the first harm. */
    HARM_AFTER(2),
    /** {0} fault. */
    HARM_AT_ONCE(1),
    /** {0} limit. */
    AT_ONCE(1),
    /** {0} time. */
    THERE_IS(1),
    THERE_IS_NONE(0),
    /** {0} what is lacking. */
    SET_LACKING(1),
    NOTE_SET_POINTS(0),
    /** {0} set point, {1} delay. */
    INTERLOCK_THERE(2),
    /** {0} the rig's set point, {1} what is usual, {2} set point. */
    INTERLOCK_TOO_EARLY(3),
    /** {0} the rig's set point, {1} its delay, {2} set point, {3} longest delay. */
    INTERLOCK_TOO_LATE(4),
    /** {0} set point, {1} longest delay, {2} faults. */
    INTERLOCK_LACKING(3),
    /** {0} what is usual, {1} limit. */
    INTERLOCK_NO_ROOM(2),
    /** {0} faults, {1} time. */
    INTERLOCK_WARNS(2),
    /** {0} set point. */
    INTERLOCK_LACKING_WARNING(1),
    /** {0} set point, {1} longest delay. */
    INTERLOCK_SECOND(2),
    INTERLOCK_SHOWS_NOTHING(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.drill");

    private final int argumentCount;

    DrillSentence(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
