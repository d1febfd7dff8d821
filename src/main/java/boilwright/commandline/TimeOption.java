package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.QuantityWriter;
import boilwright.units.Reading;

/** Reads a time that stands on the command line. */
final class TimeOption {
    private TimeOption() {}

    /**
     * The time, s.
     *
     * @param option name of the option, for messages
     * @param text what was typed
     * @param shortestS shortest time that makes sense, s
     * @param longestS longest, s
     * @throws InputRefusedException when it is no time between these
     */
    static double read(String option, String text, double shortestS, double longestS) {
        String shown = text.replaceAll("\\p{Cntrl}", "?");
        Reading reading = QuantityReader.read(text, Dimension.TIME);
        if (reading instanceof Reading.Refused refused) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OPTION_NOT_UNDERSTOOD,
                    option,
                    shown,
                    refused.fault().text()));
        }
        double seconds = ((Reading.Read) reading).si();
        if (!(seconds >= shortestS && seconds <= longestS)) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OPTION_TIME_OUTSIDE,
                    option,
                    shown,
                    QuantityWriter.writeAuto(shortestS, Dimension.TIME),
                    QuantityWriter.writeAuto(longestS, Dimension.TIME)));
        }
        return seconds;
    }
}
