package boilwright.errors;

import java.util.Locale;

/**
 * Every sentence the program can say about something that went wrong or needs a warning. The number is how many values
 * its pattern takes. The pattern's key in the bundle is the name in lower case with hyphens.
 */
public enum MessageKey {
    // --- units: numbers, spellings, likely slips

    // --- rig: fields and files

    // --- fluid: data files and ranges

    // --- numerics: roots and integration
    /** {0} what is sought, {1} lower end, {2} upper end, {3} and {4} the values there (same sign). */
    ROOT_NOT_BRACKETED(5),
    /** {0} what is sought, {1} where the value is not a number. */
    ROOT_VALUE_NOT_A_NUMBER(2),
    /** {0} what is sought, {1} and {2} the ends of the last bracket. */
    ROOT_NOT_REACHED(3),
    /** {0} time in s, {1} step in s, {2} the component that is hardest to follow. */
    STEP_TOO_SMALL(3),
    /** {0} time in s, {1} step in s, {2} the component that was hardest to follow before. */
    STEP_LEAVES_RANGE(3),
    /** {0} how many steps were taken, {1} time in s. */
    STEPS_USED_UP(2),
    /** {0} time in s, {1} the number of the event, {2} how many events happened without time going on. */
    EVENTS_WITHOUT_PROGRESS(3),
    /** {0} time in s: the state there is not one that can exist. */
    START_STATE_NOT_POSSIBLE(1),
    /** {0} time in s, {1} the name of the component whose derivative there is not a number. */
    DERIVATIVE_NOT_A_NUMBER(2),
    /** {0} time in s, {1} the number of the event whose value there is not a number. */
    EVENT_NOT_A_NUMBER(2),

    // --- thermal: the model and its results

    // --- answers: margins and verdicts

    // --- report and command line

    /** {0} what failed unexpectedly. */
    INTERNAL_FAULT(1);

    private final int argumentCount;

    MessageKey(int argumentCount) {
        this.argumentCount = argumentCount;
    }

    /** How many values the sentence takes. */
    public int argumentCount() {
        return argumentCount;
    }

    /** The sentence's key in the resource bundle. */
    public String bundleKey() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
