package boilwright.units;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says what is wrong with a number that the reader does not take, and what was probably meant. */
final class NumberFaults {
    private static final Pattern CONTINUES =
            Pattern.compile("(?!1?/\\s?[a-zA-Z])(?:[0-9.,_'^+*/\u00d7-]|[eE](?:[\\s+-]|$)|[xX]\\s?[0-9]).*");
    private static final Pattern COMMA = Pattern.compile("([+-]?[0-9.,]*,[0-9.,]*(?:[eE][+-]?[0-9]+)?)(.*)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([+-]?)([0-9]*),([0-9]+)([eE][+-]?[0-9]+)?");
    private static final Pattern ONE_GROUP = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern GROUPS = Pattern.compile("[+-]?[0-9]{1,3}(?:,[0-9]{3})+(?:\\.[0-9]*)?");
    private static final Pattern POINT_GROUPS = Pattern.compile("[+-]?[0-9]{1,3}(?:\\.[0-9]{3})+,[0-9]+");
    private static final Pattern BLANK_GROUPS =
            Pattern.compile("([+-]?[0-9]{1,3}(?: [0-9]{3})+(?:\\.[0-9]+)?)(?![0-9]).*");
    private static final Pattern POWER = Pattern.compile(
            "([+-]?[0-9]+(?:\\.[0-9]*)?)\\s*[xX*\u00d7\u00b7]\\s*10\\s*\\^\\s*([+-]?[0-9]+)(?![0-9]).*");
    private static final Pattern BARE_POWER = Pattern.compile("([+-]?)10\\s*\\^\\s*([+-]?[0-9]+)(?![0-9]).*");
    private static final Pattern NOT_FINITE =
            Pattern.compile("[+-]?(?:nan|inf|infinity|\u221e)\\b.*|[+-]?\u221e.*", Pattern.CASE_INSENSITIVE);

    private NumberFaults() {}

    /** Whether what follows a number belongs to it rather than being a unit. */
    static boolean continuesNumber(String rest) {
        return CONTINUES.matcher(rest).matches();
    }

    /**
     * The fault of a text whose number was not understood.
     *
     * @param text the whole text
     * @param number the part at its front that is a number; may be empty
     * @param rest what follows that
     */
    static Message explain(String text, String number, String rest, Dimension dimension) {
        Matcher comma = COMMA.matcher(text);
        if (comma.matches()) {
            return comma(text, comma.group(1), dimension);
        }
        Matcher power = POWER.matcher(text);
        if (power.matches()) {
            return meant(MessageKey.NUMBER_POWER_WRITTEN_OUT, text, power.group(1) + "e" + exponent(power.group(2)));
        }
        Matcher barePower = BARE_POWER.matcher(text);
        if (barePower.matches()) {
            String likely = barePower.group(1) + "1e" + exponent(barePower.group(2));
            return meant(MessageKey.NUMBER_POWER_WRITTEN_OUT, text, likely);
        }
        Matcher blanks = BLANK_GROUPS.matcher(text);
        if (blanks.matches()) {
            return meant(MessageKey.NUMBER_WITH_BLANK, text, blanks.group(1).replace(" ", ""));
        }
        if (NOT_FINITE.matcher(text).matches()) {
            return Message.of(MessageKey.NUMBER_NOT_FINITE, Shown.of(text), dimension.example());
        }
        boolean noDigits = number.isEmpty() && rest.chars().noneMatch(Character::isDigit);
        MessageKey key = noDigits ? MessageKey.NUMBER_MISSING : MessageKey.NUMBER_NOT_UNDERSTOOD;
        return Message.of(key, Shown.of(text), dimension.example());
    }

    private static Message comma(String text, String number, Dimension dimension) {
        if (ONE_GROUP.matcher(number).matches()) {
            return Message.of(
                    MessageKey.NUMBER_WITH_UNCLEAR_COMMA,
                    Shown.of(text),
                    number.replace(',', '.'),
                    number.replace(",", ""));
        }
        Matcher decimal = DECIMAL_COMMA.matcher(number);
        if (decimal.matches()) {
            String whole = decimal.group(2).isEmpty() ? "0" : decimal.group(2);
            String exponent = decimal.group(4) == null ? "" : decimal.group(4);
            String likely = decimal.group(1) + whole + "." + decimal.group(3) + exponent;
            return meant(MessageKey.NUMBER_WITH_COMMA, text, likely);
        }
        if (GROUPS.matcher(number).matches()) {
            return meant(MessageKey.NUMBER_WITH_COMMA, text, number.replace(",", ""));
        }
        if (POINT_GROUPS.matcher(number).matches()) {
            return meant(
                    MessageKey.NUMBER_WITH_COMMA, text, number.replace(".", "").replace(',', '.'));
        }
        return Message.of(MessageKey.NUMBER_NOT_UNDERSTOOD, Shown.of(text), dimension.example());
    }

    private static Message meant(MessageKey key, String text, String likely) {
        return Message.of(key, Shown.of(text), likely);
    }

    private static String exponent(String written) {
        return written.replace("+", "");
    }
}
