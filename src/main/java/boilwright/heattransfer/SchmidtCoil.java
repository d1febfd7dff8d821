package boilwright.heattransfer;

/**
 * Where flow in a coiled tube stops being laminar, and how much more it transfers when turbulent (E. F. Schmidt, Chem. Ing.
 * Tech. 39 (1967) 781; VDI Heat Atlas, part G3).
 */
public final class SchmidtCoil {
    private SchmidtCoil() {}

    /**
     * Critical Reynolds number, 2300 (1 + 8.6 (d/D)^0.45).
     *
     * @param curvature bore over diameter of the coil's centre line, 0 to 0.2
     */
    public static double criticalReynolds(double curvature) {
        return FlowRegimes.LAMINAR_END * (1 + 8.6 * Math.pow(curvature, 0.45));
    }

    /**
     * Nusselt number of a coil over that of a straight tube in fully turbulent flow, 1 + 3.6 (1 - d/D)(d/D)^0.8.
     *
     * @param curvature 0 to 0.2
     */
    public static double turbulentRatio(double curvature) {
        return 1 + 3.6 * (1 - curvature) * Math.pow(curvature, 0.8);
    }
}
