package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;

/** Numbers on the command line that have a range. */
final class NumberOption {
    private NumberOption() {}

    /**
     * Looks whether a whole number makes sense.
     *
     * @param option name of the option, for messages
     * @param value what was typed
     * @throws InputRefusedException when it lies outside
     */
    static void require(String option, int value, int fewest, int most) {
        if (value < fewest || value > most) {
            throw new InputRefusedException(Message.of(
                    MessageKey.SPREAD_NUMBER_OUTSIDE,
                    option,
                    Integer.toString(value),
                    Integer.toString(fewest),
                    Integer.toString(most)));
        }
    }

    /**
     * A quantity, SI.
     *
     * @param option name of the option, for messages
     * @param text what was typed
     * @param dimension what it measures
     * @param low least value accepted, SI
     * @param high greatest value accepted, SI
     * @throws InputRefusedException when it is nothing of the kind, or outside
     */
    static double read(String option, String text, Dimension dimension, double low, double high) {
        String shown = text.replaceAll("\\p{Cntrl}", "?");
        Reading reading = QuantityReader.read(text, dimension);
        if (reading instanceof Reading.Refused refused) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OPTION_NOT_UNDERSTOOD,
                    option,
                    shown,
                    refused.fault().text()));
        }
        double value = ((Reading.Read) reading).si();
        if (!(value >= low && value <= high)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.CHOICE_OPTION_RANGE, option, shown, words(low, dimension), words(high, dimension)));
        }
        return value;
    }

    private static String words(double value, Dimension dimension) {
        return dimension == Dimension.FRACTION
                ? Double.toString(value).replaceAll("\\.0$", "")
                : QuantityWriter.writeAuto(value, dimension);
    }
}
