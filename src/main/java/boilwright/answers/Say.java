package boilwright.answers;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Quantities in sentences. */
final class Say {
    private Say() {}

    static String power(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }

    static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    static String temperature(double kelvin) {
        return QuantityWriter.writeAuto(kelvin, Dimension.TEMPERATURE);
    }

    static String kelvins(double difference) {
        return QuantityWriter.writeAuto(difference, Dimension.TEMPERATURE_DIFFERENCE);
    }

    static String time(double seconds) {
        return QuantityWriter.writeAuto(seconds, Dimension.TIME);
    }

    static String coefficient(double h) {
        return QuantityWriter.writeAuto(h, Dimension.HEAT_TRANSFER_COEFFICIENT);
    }

    static String percent(double share) {
        return Long.toString(Math.round(100 * share));
    }

    static String ratio(double ratio) {
        return String.format(java.util.Locale.ROOT, "%.2f", ratio);
    }
}
