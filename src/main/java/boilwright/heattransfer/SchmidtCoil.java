package boilwright.heattransfer;

/**
 * Where flow in a coiled tube stops being laminar (E. F. Schmidt, Chem. Ing. Tech. 39 (1967) 781; VDI Heat Atlas, part G3).
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
}
