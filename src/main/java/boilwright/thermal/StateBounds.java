package boilwright.thermal;

import boilwright.fluid.Water;

/** Which states of a model can be: trial states beyond them are rejected, never clamped. */
final class StateBounds {
    /** No boiler wall becomes hotter than a flame. */
    private static final double HOTTEST_WALL_K = 2000;

    private StateBounds() {}

    /** Whether every property of the state can be looked up. */
    static boolean admit(PumpModel model, double[] y) {
        StateLayout layout = model.layout;
        for (int i = 0; i < layout.quadratures; i++) {
            if (layout.isTemperature(i)) {
                boolean isWater = layout.isWater(i);
                double low = isWater ? Water.LOWEST_K : model.fluid.lowestTemperature();
                double high = isWater
                        ? Water.HIGHEST_K
                        : i == layout.boilerWall ? HOTTEST_WALL_K : model.fluid.highestTemperature();
                if (!(y[i] >= low && y[i] <= high)) {
                    return false;
                }
            }
        }
        return y[layout.oilMass] > 0 && model.forelinePa(y) > 0;
    }
}
