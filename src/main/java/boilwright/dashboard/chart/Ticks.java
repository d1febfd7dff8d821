package boilwright.dashboard.chart;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Round numbers for an axis: steps of 1, 2 and 5, decades, and those of a clock. */
final class Ticks {
    private static final long[] CLOCK_STEPS_S = {
        1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400
    };
    private static final int[] ROUND = {1, 2, 5, 10};
    private static final int LEAST_PLAIN = -3;
    private static final int MOST_PLAIN = 5;
    /** Fewer decades than this get numbers between them. */
    private static final int FEW_DECADES = 2;
    /** Up to this many decades get lines between them. */
    private static final int SOME_DECADES = 8;

    private Ticks() {}

    /** At most about so many ticks between two values, low first. */
    static List<Tick> linear(double low, double high, int most) {
        List<Tick> ticks = new ArrayList<>();
        double range = high - low;
        if (!(range > 0) || !Double.isFinite(range) || most < 1) {
            return ticks;
        }
        double wanted = range / most;
        int power = (int) Math.floor(Math.log10(wanted));
        int digit = 10;
        for (int candidate : ROUND) {
            if (candidate * Math.pow(10, power) >= wanted * (1 - 1e-9)) {
                digit = candidate;
                break;
            }
        }
        BigDecimal step = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
        double size = step.doubleValue();
        long first = (long) Math.ceil(low / size - 1e-9);
        long last = (long) Math.floor(high / size + 1e-9);
        for (long i = first; i <= last && ticks.size() <= 2 * most + 2; i++) {
            BigDecimal value = step.multiply(BigDecimal.valueOf(i));
            ticks.add(new Tick(value.doubleValue(), number(value)));
        }
        return ticks;
    }

    /** Ticks between two positive values whose equal ratios are equal steps; at most about so many with a number. */
    static List<Tick> logarithmic(double low, double high, int most) {
        int first = (int) Math.ceil(Math.log10(low) - 1e-9);
        int last = (int) Math.floor(Math.log10(high) + 1e-9);
        int decades = last - first + 1;
        if (decades < FEW_DECADES && high / low < 30) {
            return linear(low, high, most).stream().filter(t -> t.value() > 0).toList();
        }
        int every = Math.max(1, (int) Math.ceil((double) decades / Math.max(1, most)));
        boolean between = decades <= SOME_DECADES && every == 1;
        List<Tick> ticks = new ArrayList<>();
        for (int power = first - 1; power <= last; power++) {
            for (int digit = 1; digit <= (between ? 9 : 1); digit++) {
                BigDecimal value = BigDecimal.valueOf(digit).scaleByPowerOfTen(power);
                if (value.doubleValue() < low * (1 - 1e-9) || value.doubleValue() > high * (1 + 1e-9)) {
                    continue;
                }
                boolean numbered = digit == 1 && Math.floorMod(power, every) == 0
                        || decades <= FEW_DECADES + 1 && most >= 3 * decades && (digit == 2 || digit == 5);
                ticks.add(new Tick(value.doubleValue(), numbered ? number(value) : ""));
            }
        }
        return ticks;
    }

    /**
     * The step of a clock.
     *
     * @param leastS the step is at least so long, s
     */
    static long clockStep(double leastS) {
        for (long candidate : CLOCK_STEPS_S) {
            if (candidate >= leastS) {
                return candidate;
            }
        }
        long day = CLOCK_STEPS_S[CLOCK_STEPS_S.length - 1];
        return day * (long) Math.ceil(leastS / day);
    }

    /** Ticks of a clock between two times, s, in a step of {@link #clockStep}. */
    static List<Tick> clock(double lowS, double highS, long step) {
        List<Tick> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(lowS / step - 1e-9); i * step <= highS + 1e-9 * step; i++) {
            ticks.add(new Tick(i * step, clock(i * step)));
        }
        return ticks;
    }

    /** A time as hours, minutes and seconds, to the nearest second. */
    static String clock(double seconds) {
        long whole = Math.abs(Math.round(seconds));
        String sign = Math.round(seconds) < 0 ? "-" : "";
        return String.format(Locale.ROOT, "%s%d:%02d:%02d", sign, whole / 3600, whole / 60 % 60, whole % 60);
    }

    private static String number(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = value.stripTrailingZeros();
        int power = stripped.precision() - stripped.scale() - 1;
        if (power >= LEAST_PLAIN && power <= MOST_PLAIN) {
            return value.setScale(Math.max(0, stripped.scale())).toPlainString();
        }
        BigDecimal digits = stripped.scaleByPowerOfTen(-power);
        return digits.toPlainString() + "e" + power;
    }

    /**
     * A line of the grid.
     *
     * @param value where, in the unit of the axis
     * @param text its number; empty for a line between the numbered ones
     */
    record Tick(double value, String text) {}
}
