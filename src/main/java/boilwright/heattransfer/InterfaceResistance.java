package boilwright.heattransfer;

/**
 * Coefficient of the liquid-vapour interface from kinetic theory with an accommodation coefficient of 1, h_i =
 * p/sqrt(2 pi Rs Ts) hfg^2/(Rs Ts^2): the Hertz-Knudsen flux linearised with Clausius-Clapeyron (V. P. Carey,
 * Liquid-Vapor Phase-Change Phenomena, ch. 4). Good while the interface is within a few kelvin of saturation; at low
 * pressure it is a resistance as large as the film's.
 */
public final class InterfaceResistance {
    private InterfaceResistance() {}

    /**
     * Interfacial heat transfer coefficient.
     *
     * @param pressure vapour pressure at the interface, Pa
     * @param saturationK saturation temperature at that pressure, K
     * @param specificGasConstant R/M of the vapour, J/(kg K)
     * @param latentHeat J/kg
     * @return W/(m2 K)
     */
    public static double coefficient(
            double pressure, double saturationK, double specificGasConstant, double latentHeat) {
        double rt = specificGasConstant * saturationK;
        return pressure / Math.sqrt(2 * Math.PI * rt) * latentHeat * latentHeat / (rt * saturationK);
    }
}
