package boilwright.errors;

import java.util.Locale;

/**
 * Every sentence the program can say about something that went wrong or needs a warning. The number is how many values
 * its pattern takes. The pattern's key in the bundle is the name in lower case with hyphens.
 */
public enum MessageKey {
    // --- units: numbers, spellings, likely slips
    /** {0} what is wanted, with its article; {1} an example. */
    QUANTITY_EMPTY(2),
    /** {0} the text; {1} an example. */
    NUMBER_MISSING(2),
    /** {0} the text; {1} an example. */
    NUMBER_NOT_UNDERSTOOD(2),
    /** {0} the text; {1} an example. */
    NUMBER_NOT_FINITE(2),
    /** {0} the text. */
    NUMBER_OUT_OF_REACH(1),
    /** {0} the text; {1} the number as it was probably meant. */
    NUMBER_WITH_COMMA(2),
    /** {0} the text; {1} the number if the comma is a decimal one; {2} if it parts thousands. */
    NUMBER_WITH_UNCLEAR_COMMA(3),
    /** {0} the text; {1} the number as it was probably meant. */
    NUMBER_WITH_BLANK(2),
    /** {0} the text; {1} the number as it is to be written. */
    NUMBER_POWER_WRITTEN_OUT(2),
    /** {0} the text; {1} the number it says; {2} the number probably meant. */
    NUMBER_SLIPPED_EXPONENT(3),
    /** {0} the text; {1} what is wanted, with its article; {2} accepted units. */
    UNIT_MISSING(3),
    /** {0} the unit found; {1} what is wanted, with its article; {2} accepted units. */
    UNIT_UNKNOWN(3),
    /** {0} the unit found; {1} nearest accepted spelling; {2} what is wanted, with its article; {3} accepted units. */
    UNIT_UNKNOWN_NEAREST(4),
    /** {0} the text; {1} what its unit measures; {2} what is wanted; {3} accepted units. */
    UNIT_OF_OTHER_DIMENSION(4),
    /** {0} the text; {1} absolute zero in its unit. */
    BELOW_ABSOLUTE_ZERO(2),

    // --- rig: fields and files

    // --- fluid: data files and ranges

    /** {0} id found, {1} ids there are. */
    FLUID_UNKNOWN(2),

    /** {0} id found, {1} the nearest one, {2} ids there are. */
    FLUID_UNKNOWN_NEAREST(3),

    /** {0} file or folder, {1} kind of failure. */
    FLUID_FILE_UNREADABLE(2),

    /** {0} file, {1} most bytes. */
    FLUID_FILE_TOO_LONG(2),

    /** {0} file, {1} line, {2} column, {3} the parser's words. */
    FLUID_FILE_NOT_JSON(4),

    /** {0} file. */
    FLUID_FILE_EMPTY(1),

    /** {0} file, {1} deepest nesting, or a number or text of absurd length. */
    FLUID_FILE_TOO_DEEP(2),

    /** {0} folder. */
    FLUID_FOLDER_EMPTY(1),

    /** {0} file, {1} id, {2} ids there are. */
    FLUID_ID_TAKEN(3),

    /** {0} file, {1} field path. */
    FLUID_FIELD_MISSING(2),

    /** {0} file, {1} field path, {2} accepted names. */
    FLUID_FIELD_UNKNOWN(3),

    /** {0} file, {1} field path, {2} the nearest name, {3} accepted names. */
    FLUID_FIELD_UNKNOWN_NEAREST(4),

    /** {0} file, {1} field path, {2} value found, {3} what is accepted. */
    FLUID_FIELD_REFUSED(4),

    /** {0} file, {1} field path, {2} value found, {3} the nearest accepted value, {4} accepted values. */
    FLUID_FIELD_REFUSED_NEAREST(5),

    /** {0} file, {1} field path, {2} value in SI and where, {3} and {4} what is plausible. */
    FLUID_PROPERTY_IMPLAUSIBLE(5),

    /** {0} file, {1} field path, {2} temperature in K. */
    FLUID_PROPERTY_MUST_RISE(3),

    /** {0} file, {1} field path, {2} temperature in K. */
    FLUID_PROPERTY_MUST_FALL(3),

    /** {0} file, {1} field path, {2} its range, {3} span needed. */
    FLUID_RANGE_TOO_SHORT(4),

    /** {0} file, {1} temperature in K, {2} ratio, {3} and {4} accepted. */
    FLUID_LATENT_HEAT(5),

    /** {0} fluid, {1} property, {2} and {3} range in K, {4} and {5} temperatures used in K. */
    FLUID_EXTRAPOLATED(6),

    /** {0} fluid, {1} pressure in Pa. */
    FLUID_SATURATION_NOT_FOUND(2),

    /** {0} substance, {1} property, {2} temperature in K, {3} and {4} span in K. */
    PROPERTY_TEMPERATURE_OUTSIDE(5),

    /** {0} substance, {1} pressure in Pa, {2} and {3} span in Pa. */
    PROPERTY_PRESSURE_OUTSIDE(4),

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
    /** {0} oil temperature in degC, {1} rounds tried. */
    COLUMN_NOT_AT_REST(2),
    /** {0} rounds tried. */
    JET_MODES_NOT_SETTLED(1),
    /** {0} what did not close, {1} closure found, {2} closure allowed. */
    ENERGY_NOT_CLOSED(3),

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
