package boilwright.dashboard.model;

import boilwright.fluid.WorkingFluid;
import boilwright.rig.Rig;
import boilwright.units.PhysicalConstants;
import javafx.scene.paint.Color;

/**
 * Colours of temperatures: from cool slate through warm sand to ember, perceptually even in OKLab and of ever falling (on a
 * dark page ever rising) lightness, so that it reads without seeing hues.
 */
public final class TemperatureScale {
    /** The page on which the colours stand. */
    public enum Look {
        /** Cold is pale, hot is deep. */
        ON_LIGHT(OkLab.ofHue(0.80, 0.036, 240), OkLab.ofHue(0.735, 0.085, 80), OkLab.ofHue(0.49, 0.165, 36)),
        /** Cold is dim, hot glows. */
        ON_DARK(OkLab.ofHue(0.43, 0.036, 245), OkLab.ofHue(0.62, 0.075, 80), OkLab.ofHue(0.74, 0.165, 42));

        private final OkLab slate;
        private final OkLab sand;
        private final OkLab ember;

        Look(OkLab slate, OkLab sand, OkLab ember) {
            this.slate = slate;
            this.sand = sand;
            this.ember = ember;
        }
    }

    private static final int STEPS = 512;
    private static final double LOW_STEP = 10;
    private static final double HIGH_STEP = 50;
    /** Room above the hottest oil for the walls that heat it, K. */
    private static final double WALLS_ABOVE_OIL_K = 30;

    private final double lowK;
    private final double highK;
    private final Color[] colors = new Color[STEPS + 1];

    private TemperatureScale(double lowK, double highK, Look look) {
        this.lowK = lowK;
        this.highK = highK;
        double first = look.slate.distance(look.sand);
        double bend = first / (first + look.sand.distance(look.ember));
        for (int i = 0; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            OkLab color = share <= bend
                    ? look.slate.towards(look.sand, share / bend)
                    : look.sand.towards(look.ember, (share - bend) / (1 - bend));
            colors[i] = color.toColor();
        }
    }

    /**
     * A scale between two temperatures.
     *
     * @param lowK coldest, K
     * @param highK hottest, K; above lowK
     * @param look the page it stands on
     * @throws IllegalArgumentException when the temperatures are not in order
     */
    public static TemperatureScale of(double lowK, double highK, Look look) {
        if (!(highK > lowK)) {
            throw new IllegalArgumentException("a scale needs two temperatures in order, not " + lowK + ", " + highK);
        }
        return new TemperatureScale(lowK, highK, look);
    }

    /** The scale that suits a rig at every moment: from its coldest water or air to the walls around its hottest oil. */
    public static TemperatureScale of(Rig rig, WorkingFluid fluid, Look look) {
        double coldest = Math.min(rig.room().temperatureK(), rig.cooling().inletTemperatureK());
        double designPa = rig.limits().requiredBoilerPressurePa().orElse(fluid.usualBoilerPressure());
        double hottest = fluid.saturationTemperature(2 * designPa) + WALLS_ABOVE_OIL_K;
        double low = Math.floor((coldest - PhysicalConstants.ZERO_CELSIUS_K) / LOW_STEP) * LOW_STEP;
        double high = Math.max(
                low + HIGH_STEP, Math.ceil((hottest - PhysicalConstants.ZERO_CELSIUS_K) / HIGH_STEP) * HIGH_STEP);
        return of(low + PhysicalConstants.ZERO_CELSIUS_K, high + PhysicalConstants.ZERO_CELSIUS_K, look);
    }

    /** The colour of a temperature, K; beyond the ends that of the end. */
    public Color at(double temperatureK) {
        double share = (temperatureK - lowK) / (highK - lowK);
        return colors[(int) Math.round(STEPS * Math.max(0, Math.min(1, share)))];
    }

    /** Its cold end, K. */
    public double lowK() {
        return lowK;
    }

    /** Its hot end, K. */
    public double highK() {
        return highK;
    }
}
