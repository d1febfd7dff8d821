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

    /** {0} id found, {1} ids there are. */
    FLUID_UNKNOWN(2),

    /** {0} file or folder, {1} kind of failure. */
    FLUID_FILE_UNREADABLE(2),

    /** {0} file, {1} most bytes. */
    FLUID_FILE_TOO_LONG(2),

    /** {0} file, {1} line and column, {2} the parser's words. */
    FLUID_FILE_NOT_JSON(3),

    /** {0} folder. */
    FLUID_FOLDER_EMPTY(1),

    /** {0} file, {1} id, {2} ids there are. */
    FLUID_ID_TAKEN(3),

    /** {0} file, {1} field path. */
    FLUID_FIELD_MISSING(2),

    /** {0} file, {1} field path, {2} accepted names. */
    FLUID_FIELD_UNKNOWN(3),

    /** {0} file, {1} field path, {2} value found, {3} what is accepted. */
    FLUID_FIELD_REFUSED(4),

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
