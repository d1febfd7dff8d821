package boilwright.companion;

import boilwright.errors.Sentences;

/**
 * Every sentence of a run. The number is how many values its pattern takes; the pattern, which shows what each value is, stands
 * in the bundle {@code boilwright/text/companion.properties} under the name in lower case with hyphens.
 */
enum CompanionText {
    // readings and sights
    READING_FORELINE(0),
    READING_CHAMBER(0),
    READING_BOILER(0),
    READING_POWER(0),
    READING_WATER_IN(0),
    READING_WATER_OUT(0),
    READING_WATER_FLOW(0),
    READING_CHARGE(0),
    READING_TAKEN(3),
    READING_TAKEN_ALONE(2),
    NOTE_TAKEN(0),
    NOTE_BLANK(0),
    SIGHT_DEGASSED(0),
    SIGHT_FIRST_JET(0),
    SIGHT_TOP_JET(0),
    SIGHT_FULL(0),
    SIGHT_JETS_GONE(0),
    SIGHT_COLD(0),
    SIGHT_BOILER(1),
    SIGHT_NOTED(1),
    SIGHT_WITHOUT_CLOCK(1),
    // clocks and steps
    STARTED_COLD(0),
    STARTED_HOT(0),
    CLOCK_RUNS(0),
    STOP_RUNS(0),
    NO_SUCH_CLOCK(0),
    CLOCK_TAKEN_BACK(0),
    STEP_DONE(1),
    STEP_DONE_AT(2),
    STEP_DONE_BEFORE(1),
    STEP_TAKEN_BACK(1),
    NO_STEP_LEFT(0),
    NOTHING_TO_TAKE_BACK(0),
    AS_COMPUTED(0),
    LATER(1),
    EARLIER(1),
    RUN_IS_OVER(0),
    ENDED(0),
    WARN_SKIPPED_RULE(3),
    WARN_SKIPPED(2),
    WARN_READING(4),
    WARN_ONCE_MORE(0),
    // alarms
    ALARM_OVERDUE(4),
    ALARM_LIMIT(4),
    NO_ALARM(0),
    ALARMS_ACKNOWLEDGED(0),
    // what remains
    OUTLOOK_NO_CLOCK(0),
    OUTLOOK_NO_HEAT(0),
    OUTLOOK_NO_STRETCH(0),
    OUTLOOK_NOTHING_SEEN(0),
    OUTLOOK_UP(4),
    OUTLOOK_DOWN(4),
    OUTLOOK_SAME_UP(2),
    OUTLOOK_SAME_DOWN(2),
    OUTLOOK_CLIPPED(1),
    OUTLOOK_WATTS(1),
    AHEAD_TOP_JET(0),
    AHEAD_FULL(0),
    AHEAD_VALVE(0),
    AHEAD_JETS_GONE(0),
    AHEAD_COLD(0),
    AHEAD_AIR(0),
    AHEAD_OPEN(0),
    // the log
    LOG_TORN(2),
    LOG_LINES(1),
    LOG_MOVED_FROM(1),
    LOG_MOVED_TO(1);

    private static final Sentences SENTENCES = new Sentences("boilwright.text.companion");

    private final int argumentCount;

    CompanionText(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** The whole sentence with its values. */
    String say(String... values) {
        return SENTENCES.say(this, argumentCount, values);
    }
}
