package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.SpreadMessage;

/** Looks whether a whole number on the command line is one that makes sense. */
final class NumberOption {
    private NumberOption() {}

    /**
     * @param option name of the option, for messages
     * @param value what was typed
     * @throws InputRefusedException when it lies outside
     */
    static void require(String option, int value, int fewest, int most) {
        if (value < fewest || value > most) {
            throw new InputRefusedException(Message.of(
                    SpreadMessage.SPREAD_NUMBER_OUTSIDE,
                    option,
                    Integer.toString(value),
                    Integer.toString(fewest),
                    Integer.toString(most)));
        }
    }
}
