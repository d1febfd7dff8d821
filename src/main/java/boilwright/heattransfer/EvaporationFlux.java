package boilwright.heattransfer;

/**
 * Hertz-Knudsen evaporation (or, negative, condensation) flux, G = a (psat - p)/sqrt(2 pi Rs T) (S. Dushman, Scientific
 * Foundations of Vacuum Technique, ch. 1; M. Knudsen, Ann. Phys. 47 (1915) 697), liquid and vapour at one temperature.
 */
public final class EvaporationFlux {
    private EvaporationFlux() {}

    /**
     * Net mass flux leaving a liquid surface.
     *
     * @param coefficient evaporation coefficient a, 0 to 1
     * @param saturationPressure psat at the surface's temperature, Pa
     * @param pressure partial pressure of the vapour over the surface, Pa
     * @param temperatureK surface temperature, K
     * @param specificGasConstant R/M of the vapour, J/(kg K)
     * @return kg/(m2 s); negative when vapour condenses
     */
    public static double flux(
            double coefficient,
            double saturationPressure,
            double pressure,
            double temperatureK,
            double specificGasConstant) {
        return coefficient * (saturationPressure - pressure) * perPascal(temperatureK, specificGasConstant);
    }

    /**
     * Flux per pascal for a coefficient of 1, 1/sqrt(2 pi Rs T); times the pressure it is the most that can strike a
     * surface.
     *
     * @param temperatureK K
     * @param specificGasConstant R/M of the vapour, J/(kg K)
     * @return kg/(m2 s Pa)
     */
    public static double perPascal(double temperatureK, double specificGasConstant) {
        return 1 / Math.sqrt(2 * Math.PI * specificGasConstant * temperatureK);
    }
}
