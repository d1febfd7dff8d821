package boilwright.units;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.units.Reading.Read;
import boilwright.units.Reading.Refused;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads quantities as people write them: a decimal number with a point, and a spelling of {@link UnitTable}, such as "60
 * mL" or "2.2e-5 m3". The same everywhere, whatever the machine's language. Nothing is guessed: a doubtful text is
 * refused with its likely meaning.
 */
public final class QuantityReader {
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]++(?:\\.[0-9]*+)?|\\.[0-9]++)([eE][+-]?[0-9]++)?");
    private static final Pattern SLIPPED = Pattern.compile("([+-]?)10[eE]([+-]?[0-9]+)");
    private static final Pattern NOT_ZERO = Pattern.compile("[^eE]*[1-9].*");
    /** Rounding of degF at absolute zero, K; anything lower is a fault of the writer's. */
    private static final double ROUNDING_K = 1e-9;

    private QuantityReader() {}

    /**
     * Reads one quantity.
     *
     * @param text number and unit; a blank between them is optional; a share or ratio may stand without a unit
     * @param dimension what it has to measure
     * @return the SI value with the unit it was written in, or one fault; never null. A temperature below absolute zero
     *     is a fault here; all other ranges are the affair of whoever asks
     */
    public static Reading read(String text, Dimension dimension) {
        String plain = plain(text);
        if (plain.isEmpty()) {
            return refused(MessageKey.QUANTITY_EMPTY, dimension.inWords(), dimension.example());
        }
        Matcher matcher = NUMBER.matcher(plain);
        if (!matcher.lookingAt()) {
            return new Refused(NumberFaults.explain(plain, "", plain, dimension));
        }
        String number = matcher.group();
        String rest = plain.substring(matcher.end()).strip();
        Optional<UnitSpelling> unit = UnitTable.find(rest.isEmpty() ? "1" : rest, dimension);
        if (unit.isPresent() && unit.get().isPlain() == rest.isEmpty()) {
            return read(plain, number, unit.get());
        }
        boolean isUnit = !"1".equals(rest) && !UnitTable.find(rest).isEmpty();
        if (!isUnit && NumberFaults.continuesNumber(rest)) {
            return new Refused(NumberFaults.explain(plain, number, rest, dimension));
        }
        return new Refused(unitFault(plain, rest, dimension));
    }

    private static Reading read(String plain, String number, UnitSpelling unit) {
        double value = Double.parseDouble(number);
        double si = unit.toSi(value);
        boolean vanished = value == 0.0 || (si == 0.0 && !unit.hasOffset());
        if (!Double.isFinite(si) || (vanished && NOT_ZERO.matcher(number).matches())) {
            return refused(MessageKey.NUMBER_OUT_OF_REACH, Shown.of(plain));
        }
        if (unit.dimension() == Dimension.TEMPERATURE) {
            if (si < -ROUNDING_K) {
                return refused(MessageKey.BELOW_ABSOLUTE_ZERO, Shown.of(plain), QuantityWriter.exact(0.0, unit));
            }
            si = Math.max(0.0, si);
        }
        Read read = new Read(si, unit);
        Matcher slipped = SLIPPED.matcher(number);
        if (slipped.matches()) {
            String meant = slipped.group(1) + "1e" + slipped.group(2).replace("+", "");
            Message fault = Message.of(
                    MessageKey.NUMBER_SLIPPED_EXPONENT,
                    Shown.of(plain),
                    DecimalText.scientific(value),
                    DecimalText.scientific(Double.parseDouble(meant)));
            return new Refused(fault, Optional.of(read));
        }
        return read;
    }

    private static Message unitFault(String plain, String rest, Dimension dimension) {
        if (rest.isEmpty()) {
            return Message.of(
                    MessageKey.UNIT_MISSING, Shown.of(plain), dimension.inWords(), acceptedInWords(dimension));
        }
        List<UnitSpelling> others = UnitTable.find(rest);
        if (!others.isEmpty()) {
            return Message.of(
                    MessageKey.UNIT_OF_OTHER_DIMENSION,
                    Shown.of(plain),
                    others.get(0).dimension().inWords(),
                    dimension.inWords(),
                    acceptedInWords(dimension));
        }
        List<String> accepted = UnitTable.accepted(dimension).stream()
                .filter(unit -> !unit.isPlain())
                .map(UnitSpelling::text)
                .toList();
        return UnitWords.likely(rest, accepted)
                .map(nearest -> Message.of(
                        MessageKey.UNIT_UNKNOWN_NEAREST,
                        Shown.of(rest),
                        nearest,
                        dimension.inWords(),
                        acceptedInWords(dimension)))
                .orElseGet(() -> Message.of(
                        MessageKey.UNIT_UNKNOWN, Shown.of(rest), dimension.inWords(), acceptedInWords(dimension)));
    }

    private static String acceptedInWords(Dimension dimension) {
        return UnitTable.accepted(dimension).stream()
                .map(unit -> unit.isPlain() ? "no unit" : unit.text())
                .collect(Collectors.joining(", "));
    }

    /** Copied text brings blanks and minus signs of other alphabets; they have only one meaning. */
    private static String plain(String text) {
        return text.replace('\u2212', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\u2009', ' ')
                .strip();
    }

    private static Refused refused(MessageKey key, String... values) {
        return new Refused(Message.of(key, values));
    }
}
