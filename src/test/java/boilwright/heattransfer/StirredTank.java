package boilwright.heattransfer;

/**
 * A tank or bucket of one temperature: energy balances with exact solutions (dT/dt = (Q - Qc)/(M c); with a leak to the room
 * exponential; ice melts at its melting point until it is gone).
 */
public final class StirredTank {
    private StirredTank() {}

    /**
     * How fast it warms, K/s.
     *
     * @param loadW heat that comes in, W
     * @param coolingW heat taken out, W
     * @param heatCapacity of the content, J/K
     */
    public static double heatingRate(double loadW, double coolingW, double heatCapacity) {
        return (loadW - coolingW) / heatCapacity;
    }

    /**
     * Temperature after a time under a steady net load and a leak to the room, K.
     *
     * @param startK at first, K
     * @param netLoadW heat in less heat out, without the leak, W
     * @param leak conductance to the room, W/K, at least 0
     * @param roomK K
     * @param heatCapacity J/K
     * @param seconds at least 0
     */
    public static double temperature(
            double startK, double netLoadW, double leak, double roomK, double heatCapacity, double seconds) {
        double x = leak * seconds / heatCapacity;
        // (1 - exp(-x))/x, which stays 1 without a leak
        double mean = x == 0 ? 1 : -Math.expm1(-x) / x;
        return startK + (netLoadW + leak * (roomK - startK)) * seconds / heatCapacity * mean;
    }

    /**
     * How long ice lasts, s: infinite when nothing melts it, 0 without ice.
     *
     * @param iceKg at its melting point, kg
     * @param fusionHeat J/kg
     * @param loadW heat that reaches it, W, at least 0
     */
    public static double meltingTime(double iceKg, double fusionHeat, double loadW) {
        return iceKg == 0 ? 0 : iceKg * fusionHeat / loadW;
    }
}
