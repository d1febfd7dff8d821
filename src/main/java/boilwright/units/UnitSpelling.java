package boilwright.units;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * One accepted way to write a unit of one dimension, such as "mTorr", and its conversion to the SI unit of that
 * dimension. The instances are those of {@link UnitTable}; two of them are equal only when they are the same.
 *
 * <p>It converts in decimals with 34 digits and rounds once, to the nearest double: 0.3 mm is 3.0E-4 m, as a person would write it.
 */
public final class UnitSpelling {
    private final String text;
    private final Dimension dimension;
    private final BigDecimal numerator;
    private final BigDecimal denominator;
    private final BigDecimal offset;

    /** A unit that is numerator/denominator SI units, counted from offset below its zero: SI = (value + offset) n/d. */
    UnitSpelling(String text, Dimension dimension, String numerator, String denominator, String offset) {
        this.text = text;
        this.dimension = dimension;
        this.numerator = new BigDecimal(numerator);
        this.denominator = new BigDecimal(denominator);
        this.offset = new BigDecimal(offset);
    }

    /** The spelling; "1" for a plain number, which is written without any unit. */
    public String text() {
        return text;
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Whether a number in this unit stands without a unit: a share or ratio as it is. */
    public boolean isPlain() {
        return "1".equals(text);
    }

    /**
     * A value in this unit as SI.
     *
     * @param value in this unit, finite
     * @return in the SI unit of the dimension; temperatures with their offset, in K
     */
    public double toSi(double value) {
        return isSi()
                ? value
                : BigDecimal.valueOf(value)
                        .add(offset)
                        .multiply(numerator)
                        .divide(denominator, MathContext.DECIMAL128)
                        .doubleValue();
    }

    /**
     * An SI value in this unit.
     *
     * @param si in the SI unit of the dimension, finite
     * @return in this unit
     */
    public double fromSi(double si) {
        return isSi()
                ? si
                : BigDecimal.valueOf(si)
                        .multiply(denominator)
                        .divide(numerator, MathContext.DECIMAL128)
                        .subtract(offset)
                        .doubleValue();
    }

    /** Whether zero in this unit is not zero in SI (degC, degF). */
    boolean hasOffset() {
        return offset.signum() != 0;
    }

    private boolean isSi() {
        return !hasOffset() && numerator.equals(denominator);
    }

    @Override
    public String toString() {
        return text;
    }
}
