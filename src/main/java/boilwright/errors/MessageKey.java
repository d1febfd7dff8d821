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

    // --- thermal: the model and its results

    // --- answers: margins and verdicts

    // --- report and command line

    /** {0} what failed unexpectedly, {1} where the report about it is. */
    INTERNAL_FAULT(2),
    /** {0} what failed unexpectedly; no report could be written. */
    INTERNAL_FAULT_UNREPORTED(1),
    /** {0} file, {1} why, as half a sentence. */
    OUTPUT_NOT_WRITTEN(2),
    /** The answer could not be printed. */
    ANSWER_NOT_PRINTED(0),
    /** {0} file of the picture. */
    PICTURE_NEEDS_FONTS(1),
    /** {0} the two options, {1} the file that both name. */
    OUTPUTS_COINCIDE(2),
    /** {0} option, {1} file. */
    OUTPUT_OVER_INPUT(2),
    /** {0} option, {1} what it was given. */
    PATH_NOT_UNDERSTOOD(2),
    /** {0} what the usage check found, {1} command whose help to read. */
    USAGE_REFUSED(2),
    /** Stopped by the person. */
    STOPPED(0);

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
