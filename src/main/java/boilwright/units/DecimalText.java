package boilwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/** Numbers as text that {@link QuantityReader} reads back, in any locale. */
final class DecimalText {
    private static final double LEAST_PLAIN = 1e-4;
    private static final double MOST_PLAIN = 1e9;

    private DecimalText() {}

    /** Three significant figures, trailing zeros kept: "1.50", "1230", "3.30e-6". */
    static String threeFigures(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal rounded = value.round(new MathContext(3, RoundingMode.HALF_UP));
        BigDecimal padded = rounded.setScale(rounded.scale() + 3 - rounded.precision());
        return isPlain(padded) ? padded.toPlainString() : scientific(padded);
    }

    /** All digits of a number and no more: "60", "0.000125", "2.2e-5". */
    static String allDigits(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = value.stripTrailingZeros();
        return isPlain(stripped) ? stripped.toPlainString() : scientific(stripped);
    }

    /** A number with one digit before the point and a power of ten: "1e-5". */
    static String scientific(double value) {
        return value == 0.0 ? "0" : scientific(BigDecimal.valueOf(value).stripTrailingZeros());
    }

    private static boolean isPlain(BigDecimal value) {
        double size = Math.abs(value.doubleValue());
        return size >= LEAST_PLAIN && size < MOST_PLAIN;
    }

    private static String scientific(BigDecimal value) {
        String digits = value.unscaledValue().abs().toString();
        int exponent = digits.length() - 1 - value.scale();
        String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
        String sign = value.signum() < 0 ? "-" : "";
        return String.format(Locale.ROOT, "%s%s%se%d", sign, digits.charAt(0), fraction, exponent);
    }
}
