package boilwright.thermal;

import boilwright.errors.Sentences;

/**
 * Every sentence in a state or a run. The number is how many values its pattern takes; the pattern stands in {@code
 * boilwright/text/model.properties}.
 */
enum ModelText {
    /** {0} jet, {1} foreline pressure. */
    DARK_NO_VAPOUR(2),
    /** {0} jet. */
    DARK_COLUMN_TAKES_ALL(1),
    /** {0} jet, {1} percent. */
    DARK_TOO_LITTLE(2),
    /** {0} jet, {1} pressure against it, {2} what it can hold. */
    DARK_BACK_PRESSURE(3),
    /** {0} jet, {1} percent. */
    DARK_WARM_WALL(2),
    ASSUMED_LAST_LEVEL(0),
    ASSUMED_FIXED_BOUNDARIES(0),
    /** {0} foreline pressure. */
    ASSUMED_BACKING_AT_REST(1),
    ASSUMED_PROPORTIONAL(0),
    ASSUMED_WARM_CARTRIDGE(0),
    ASSUMED_OIL_REPLACED(0),
    ASSUMED_COLD_START(0),
    ASSUMED_BACKING_HOLDS(0),
    ASSUMED_BACKING_FOLLOWED(0),
    ASSUMED_HOT_START(0),
    ASSUMED_WATER_GOES_ON(0),
    /** {0} time. */
    RUN_BROKEN_OFF(1),
    HEAT_ON(0),
    HEAT_OFF(0),
    WATER_STOPS(0),
    DRILL_FILM(0),
    DRILL_CAP(0),
    DRILL_BOILS(0),
    DRILL_SHOCK(0),
    DRILL_OIL(0),
    DRILL_OIL_LOSS(0),
    DRILL_TOUCH(0),
    DRILL_FORELINE(0),
    MAINS_FAIL(0),
    MAINS_FAIL_FLAME(0),
    HEATER_STUCK(0),
    BACKING_STOPS(0),
    CARTRIDGE_EMPTY(0),
    AIR_COMES_IN(0),
    CHILLER_TRIPS(0),
    FAN_STOPS(0),
    BATTERY_ENDS(0),
    FAULT_NO_WATER(0),
    FAULT_FORELINE_GIVEN(0),
    FAULT_NO_CARTRIDGE(0),
    FAULT_NO_CHILLER(0),
    FAULT_NO_FAN(0),
    /** {0} limit. */
    LIMIT_PASSED(1),
    FUEL_EMPTY(0),
    /** {0} oil temperature. */
    WILD(1),
    /** {0} cartridge temperature. */
    CARTRIDGE_HOT(1),
    DRY(0),
    DEGASSED(0),
    DEGASSED_NOT(0),
    /** {0} foreline pressure. */
    FIRST_VAPOUR(1),
    /** {0} foreline pressure. */
    FIRST_VAPOUR_NOT(1),
    /** {0} jet. */
    FRONT(1),
    /** {0} jet. */
    FRONT_NOT(1),
    /** {0} jet. */
    JET_LIT(1),
    /** {0} jet. */
    JET_FULL(1),
    /** {0} jet, {1} percent. */
    JET_FULL_NOT(2),
    FULL_PUMPING(0),
    /** {0} jets. */
    FULL_PUMPING_NOT(1),
    /** {0} pressure. */
    CROSSOVER(1),
    CROSSOVER_NOT(0),
    /** {0} jet. */
    JET_LOST(1),
    /** {0} jet. */
    JET_LOST_NOT(1),
    JETS_GONE(0),
    JETS_GONE_NOT(0),
    FLOW_ZERO(0),
    FLOW_ZERO_NOT(0),
    /** {0} temperature. */
    AIR_ALLOWED(1),
    AIR_ALLOWED_NOT(0),
    AIR_LIMIT_UNKNOWN(0),
    TOUCH_SAFE(0),
    TOUCH_SAFE_NOT(0),
    /** {0} temperature. */
    WATER_MAY_STOP(1),
    WATER_MAY_STOP_NOT(0),
    /** {0} temperature. */
    BACKING_MAY_STOP(1),
    BACKING_MAY_STOP_NOT(0);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.model");

    private final int argumentCount;

    ModelText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
