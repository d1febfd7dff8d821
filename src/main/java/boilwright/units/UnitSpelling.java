package boilwright.units;

import javax.measure.Unit;
import javax.measure.UnitConverter;

/**
 * One accepted way to write a unit of one dimension, such as "mTorr", and its conversion to the SI unit of that
 * dimension. The instances are those of {@link UnitTable}; two of them are equal only when they are the same.
 */
public final class UnitSpelling {
    private final String text;
    private final Dimension dimension;
    private final UnitConverter toSi;
    private final UnitConverter fromSi;

    UnitSpelling(String text, Dimension dimension, Unit<?> unit, Unit<?> si) {
        this.text = text;
        this.dimension = dimension;
        try {
            this.toSi = unit.getConverterToAny(si);
            this.fromSi = si.getConverterToAny(unit);
        } catch (javax.measure.IncommensurableException fault) {
            throw new IllegalArgumentException(text + " does not measure " + dimension, fault);
        }
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
        return toSi.convert(value);
    }

    /**
     * An SI value in this unit.
     *
     * @param si in the SI unit of the dimension, finite
     * @return in this unit
     */
    public double fromSi(double si) {
        return fromSi.convert(si);
    }

    /** Whether zero in this unit is not zero in SI (degC, degF). */
    boolean hasOffset() {
        return !toSi.isLinear();
    }

    @Override
    public String toString() {
        return text;
    }
}
