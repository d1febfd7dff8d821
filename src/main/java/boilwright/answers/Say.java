package boilwright.answers;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Quantities in sentences, each in a unit that suits its size. */
public final class Say {
    private Say() {}

    /** A power given in W. */
    public static String power(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }

    /** A pressure given in Pa. */
    public static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    /** A temperature given in K. */
    public static String temperature(double kelvin) {
        return QuantityWriter.writeAuto(kelvin, Dimension.TEMPERATURE);
    }

    /** A difference of temperatures given in K. */
    public static String kelvins(double difference) {
        return QuantityWriter.writeAuto(difference, Dimension.TEMPERATURE_DIFFERENCE);
    }

    /** A time given in s. */
    public static String time(double seconds) {
        return QuantityWriter.writeAuto(seconds, Dimension.TIME);
    }

    /** A heat transfer coefficient given in W/(m2 K). */
    public static String coefficient(double h) {
        return QuantityWriter.writeAuto(h, Dimension.HEAT_TRANSFER_COEFFICIENT);
    }

    /** A volume flow given in m3/s. */
    public static String flow(double m3PerS) {
        return QuantityWriter.writeAuto(m3PerS, Dimension.VOLUME_FLOW);
    }

    /** A quantity given in SI. */
    public static String quantity(double si, Dimension dimension) {
        return QuantityWriter.writeAuto(si, dimension);
    }

    /** A volume given in m3. */
    public static String volume(double m3) {
        return QuantityWriter.writeAuto(m3, Dimension.VOLUME);
    }

    /** A share as a whole number of hundredths, without the sign. */
    public static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }

    /** A ratio with two decimals. */
    public static String ratio(double ratio) {
        return String.format(java.util.Locale.ROOT, "%.2f", ratio);
    }
}
