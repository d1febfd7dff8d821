package boilwright.sequence;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Quantities in sentences. */
final class Tell {
    private Tell() {}

    static String temperature(double kelvin) {
        return QuantityWriter.writeAuto(kelvin, Dimension.TEMPERATURE);
    }

    static String kelvins(double difference) {
        return QuantityWriter.writeAuto(difference, Dimension.TEMPERATURE_DIFFERENCE);
    }

    static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    static String time(double seconds) {
        return QuantityWriter.writeAuto(seconds, Dimension.TIME);
    }

    static String power(double watts) {
        return QuantityWriter.writeAuto(watts, Dimension.POWER);
    }

    static String flow(double m3PerS) {
        return QuantityWriter.writeAuto(m3PerS, Dimension.VOLUME_FLOW);
    }

    static String volume(double m3) {
        return QuantityWriter.writeAuto(m3, Dimension.VOLUME);
    }

    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }
}
