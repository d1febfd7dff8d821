package boilwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Writes SI values as people read them (three significant figures) and as files keep them (exactly). Every text without
 * minutes and seconds mixed is one that {@link QuantityReader} reads back.
 */
public final class QuantityWriter {
    private static final int MOST_DIGITS = 17;
    private static final int OFFSET_DECIMALS = 2;

    private QuantityWriter() {}

    /**
     * A value in a given unit with three significant figures, such as "1.50 kW" or "1230 W". Plain digits from 0.0001 up
     * to 1e9, a power of ten ("3.30e-6 1/K") outside; degC and degF to a hundredth at most.
     *
     * @param si in the SI unit of the unit's dimension
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String write(double si, UnitSpelling unit) {
        return withUnit(DecimalText.threeFigures(decimal(si, unit)), unit);
    }

    /**
     * A value in the unit in which people usually read one of that size, such as "850 W", "1.50 kW" or "235 degC"; times
     * from a minute up as "11 min 40 s" or "1 h 12 min".
     *
     * @param si in the SI unit of the dimension
     * @throws IllegalArgumentException when the value is not finite
     */
    public static String writeAuto(double si, Dimension dimension) {
        requireFinite(si);
        return dimension == Dimension.TIME ? time(si) : write(si, DisplayUnit.of(si, dimension));
    }

    /**
     * A value in a given unit with as few digits as bring back the same SI value when read (to the last bit where the
     * unit allows it, to a few parts in 1e16 where its conversion rounds), such as "60 mL".
     *
     * @param si in the SI unit of the unit's dimension
     * @throws IllegalArgumentException when the value is not finite in SI or in the unit
     */
    public static String exact(double si, UnitSpelling unit) {
        requireFinite(si);
        BigDecimal full = new BigDecimal(requireFinite(unit.fromSi(si)));
        for (int digits = 1; digits <= MOST_DIGITS; digits++) {
            BigDecimal candidate = full.round(new MathContext(digits, RoundingMode.HALF_EVEN));
            if (unit.toSi(candidate.doubleValue()) == si) {
                return withUnit(DecimalText.allDigits(candidate), unit);
            }
        }
        return withUnit(DecimalText.allDigits(BigDecimal.valueOf(full.doubleValue())), unit);
    }

    private static BigDecimal decimal(double si, UnitSpelling unit) {
        requireFinite(si);
        BigDecimal value = BigDecimal.valueOf(requireFinite(unit.fromSi(si)));
        return unit.hasOffset() ? value.setScale(OFFSET_DECIMALS, RoundingMode.HALF_UP) : value;
    }

    private static String time(double si) {
        long seconds = Math.round(Math.abs(si));
        if (Math.abs(si) < 59.95) {
            return write(si, UnitTable.find("s", Dimension.TIME).orElseThrow());
        }
        String sign = si < 0.0 ? "-" : "";
        if (seconds < 3600) {
            return sign + together(seconds / 60, "min", seconds % 60, "s");
        }
        long minutes = Math.round(seconds / 60.0);
        return sign + together(minutes / 60, "h", minutes % 60, "min");
    }

    private static String together(long large, String largeUnit, long small, String smallUnit) {
        String first = large + " " + largeUnit;
        return small == 0 ? first : first + " " + small + " " + smallUnit;
    }

    private static String withUnit(String number, UnitSpelling unit) {
        return unit.isPlain() ? number : number + " " + unit.text();
    }

    private static double requireFinite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a quantity to write must be a finite number, not " + value);
        }
        return value;
    }
}
