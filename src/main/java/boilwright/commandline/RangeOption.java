package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.Parameter;
import boilwright.spread.SpreadRange;
import boilwright.units.Dimension;
import boilwright.units.QuantityReader;
import boilwright.units.Reading;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a range of one input that stands on the command line: {@code ID=LOW..HIGH}. */
final class RangeOption {
    private static final String NAME = "--range";
    private static final Pattern FORM = Pattern.compile("([^=]+)=(.+?)\\.\\.(?!\\.)(.+)");

    private RangeOption() {}

    /**
     * The range.
     *
     * @throws InputRefusedException when it is not understood; whether it makes sense for a rig is another matter
     */
    static SpreadRange read(String text) {
        Matcher matcher = FORM.matcher(text);
        if (!matcher.matches()) {
            throw new InputRefusedException(Message.of(MessageKey.SPREAD_RANGE_FORM, shown(text)));
        }
        String id = matcher.group(1).strip();
        Dimension dimension = dimension(id)
                .orElseThrow(() -> new InputRefusedException(Message.of(MessageKey.SPREAD_RANGE_UNKNOWN, shown(id))));
        return new SpreadRange(
                id, quantity(id, matcher.group(2), dimension), quantity(id, matcher.group(3), dimension));
    }

    private static Optional<Dimension> dimension(String id) {
        Optional<Dimension> parameter = Parameter.find(id).map(Parameter::dimension);
        return parameter.isPresent() ? parameter : FieldCatalogue.find(id).flatMap(Field::dimension);
    }

    private static double quantity(String id, String text, Dimension dimension) {
        Reading reading = QuantityReader.read(text, dimension);
        if (reading instanceof Reading.Refused refused) {
            throw new InputRefusedException(Message.of(
                    MessageKey.OPTION_NOT_UNDERSTOOD,
                    NAME + " " + id,
                    shown(text),
                    refused.fault().text()));
        }
        return ((Reading.Read) reading).si();
    }

    private static String shown(String text) {
        return text.replaceAll("\\p{Cntrl}", "?");
    }
}
