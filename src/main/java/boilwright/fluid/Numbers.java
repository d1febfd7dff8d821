package boilwright.fluid;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers as short text, the same on every machine. */
final class Numbers {
    private static final MathContext DIGITS = new MathContext(6);

    private Numbers() {}

    /** At most six digits, without trailing zeros; very large and very small ones with an exponent. */
    static String text(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        if (rounded.signum() == 0) {
            return "0";
        }
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < -4 || exponent > 8 ? mantissa(rounded, exponent) : rounded.toPlainString();
    }

    private static String mantissa(BigDecimal value, int exponent) {
        return value.movePointLeft(exponent).stripTrailingZeros().toPlainString() + "e" + exponent;
    }
}
