package boilwright.dashboard.drawing;

import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;

/** Figures as the drawing's labels write them. */
final class Figures {
    private static final String NONE = "-";

    private Figures() {}

    /** A temperature, or a dash where there is none. */
    static String temperature(double k) {
        return Double.isNaN(k) ? NONE : QuantityWriter.writeAuto(k, Dimension.TEMPERATURE);
    }

    /** A share in whole percent. */
    static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    /** A length in whole millimetres. */
    static String millimetres(double metres) {
        return Math.round(1000 * metres) + " mm";
    }
}
