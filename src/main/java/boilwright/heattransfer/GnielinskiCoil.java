package boilwright.heattransfer;

/**
 * Turbulent flow in a coiled tube, V. Gnielinski, Proc. 8th Int. Heat Transfer Conf., San Francisco 6 (1986) 2847 and VDI Heat
 * Atlas, part G3: Nu = (f/8) Re Pr/(1 + 12.7 sqrt(f/8)(Pr^(2/3) - 1)), f = 0.3164 Re^(-1/4) + 0.03 sqrt(d/D). Published for Re
 * from 2.2e4 to 1.5e5, 0.7 <= Pr <= 500; without the term for the wall's viscosity, because properties are taken at the film.
 */
public final class GnielinskiCoil {
    /** Reynolds number from which flow in a coil is fully turbulent. */
    public static final double REYNOLDS_MIN = 2.2e4;

    private GnielinskiCoil() {}

    /**
     * Darcy friction factor of a smooth coil.
     *
     * @param reynolds on the bore, 2.2e4 to 1.5e5
     * @param curvature bore over diameter of the coil's centre line, 0 to 0.2
     */
    public static double friction(double reynolds, double curvature) {
        return 0.3164 / Math.sqrt(Math.sqrt(reynolds)) + 0.03 * Math.sqrt(curvature);
    }

    /**
     * Nusselt number on the bore.
     *
     * @param reynolds on the bore, 2.2e4 to 1.5e5
     * @param prandtl 0.7 to 500
     * @param curvature 0 to 0.2
     */
    public static double nusselt(double reynolds, double prandtl, double curvature) {
        double eighth = friction(reynolds, curvature) / 8;
        double pr = Math.cbrt(prandtl);
        return eighth * reynolds * prandtl / (1 + 12.7 * Math.sqrt(eighth) * (pr * pr - 1));
    }
}
