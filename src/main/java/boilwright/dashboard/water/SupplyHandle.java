package boilwright.dashboard.water;

import boilwright.dashboard.text.WindowText;
import boilwright.rig.Supply;
import boilwright.water.ChillerCapacity;
import java.util.Optional;

/**
 * What can be turned at a supply: which field its temperature is, how far it goes, and why something cannot be taken into the
 * rig.
 *
 * @param temperaturePath path of the field that its temperature is; empty when there is nothing to turn
 * @param lowestK least temperature to try, K
 * @param highestK greatest temperature to try, K
 * @param flowIsGiven whether the flow is a field of the rig
 * @param fixedWhy why its temperature cannot be turned; empty when it can
 */
record SupplyHandle(
        String temperaturePath, double lowestK, double highestK, boolean flowIsGiven, Optional<String> fixedWhy) {
    static final String FLOW_PATH = "cooling.supply.flow";
    private static final double LOWEST_K = 275.15;
    private static final double HIGHEST_K = 313.15;

    static SupplyHandle of(Supply supply) {
        double now = supply.temperatureK();
        double low = Math.min(LOWEST_K, now);
        double high = Math.max(HIGHEST_K, now);
        return switch (supply.kind()) {
            case GIVEN_FLOW -> new SupplyHandle("cooling.supply.inletTemperature", low, high, true, Optional.empty());
            case TAP -> new SupplyHandle("cooling.supply.inletTemperature", low, high, false, Optional.empty());
            case CHILLER -> {
                ChillerCapacity known =
                        ChillerCapacity.of(supply.chiller().orElseThrow().capacity());
                yield new SupplyHandle(
                        "cooling.supply.setPoint",
                        Math.max(low, known.lowestWaterK()),
                        Math.min(high, known.highestWaterK()),
                        false,
                        Optional.empty());
            }
            case TANK ->
                new SupplyHandle(
                        "cooling.supply.startTemperature",
                        low,
                        high,
                        false,
                        supply.tank().filter(tank -> tank.iceKg() > 0).map(tank -> WindowText.say("water.try.ice")));
            case FINS_AND_FAN -> new SupplyHandle("", low, high, false, Optional.of(WindowText.say("water.try.air")));
        };
    }
}
