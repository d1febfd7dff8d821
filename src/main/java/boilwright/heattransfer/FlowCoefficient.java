package boilwright.heattransfer;

/**
 * Flow coefficients of valves, meters and quick couplings (IEC 60534-1): Kv is the flow of water in m3/h that loses 1 bar, Cv
 * the flow in US gallons a minute that loses 1 psi. Turbulent flow without cavitation.
 */
public final class FlowCoefficient {
    private static final double BAR_PA = 1e5;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double REFERENCE_DENSITY = 1000;

    private FlowCoefficient() {}

    /**
     * Loss of pressure along the flow, Pa; it has the sign of the flow.
     *
     * @param kv m3/h at 1 bar, above 0
     * @param density kg/m3
     * @param flowM3PerS volume flow, m3/s
     */
    public static double pressureDrop(double kv, double density, double flowM3PerS) {
        double ratio = flowM3PerS * SECONDS_PER_HOUR / kv;
        return BAR_PA * density / REFERENCE_DENSITY * ratio * Math.abs(ratio);
    }
}
