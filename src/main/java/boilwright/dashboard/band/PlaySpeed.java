package boilwright.dashboard.band;

import boilwright.dashboard.text.WindowText;
import java.util.Locale;

/** How fast the band plays: at an even pace along the band, or in step with the pump's own clock. */
enum PlaySpeed {
    ALL_IN_20_S(20, 0),
    ALL_IN_1_MIN(60, 0),
    ALL_IN_3_MIN(180, 0),
    TIMES_60(0, 60),
    REAL_TIME(0, 1);

    /** The plateau has no clock of its own; in step with the pump's clock it is passed in this time, s. */
    private static final double PLATEAU_S = 5;

    private final double wholeS;
    private final double factor;

    PlaySpeed(double wholeS, double factor) {
        this.wholeS = wholeS;
        this.factor = factor;
    }

    /** What the choice says. */
    String words() {
        return WindowText.say("band.speed." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * Where the cursor stands a little later.
     *
     * @param axis the axis
     * @param fromS where it stands, s
     * @param byS how much later, s
     * @return s; the end of the axis at the latest
     */
    double advance(BandAxis axis, double fromS, double byS) {
        if (wholeS > 0) {
            return axis.scale().axisS(axis.scale().share(fromS) + byS / wholeS);
        }
        Stretch stretch = axis.stretchAt(fromS);
        double rate = stretch.plateau() ? stretch.lengthS() / PLATEAU_S : factor;
        return Math.min(stretch.endS(), fromS + rate * byS);
    }
}
