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
