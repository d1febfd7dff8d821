package boilwright.heattransfer;

/**
 * Turbulent flow in a smooth tube, Nu = 0.023 Re^0.8 Pr^n with n 0.4 for heating and 0.3 for cooling the fluid (F. W.
 * Dittus and L. M. K. Boelter, Univ. Calif. Publ. Eng. 2 (1930) 443, in the form of Incropera, Bergman, Lavine, DeWitt, eq.
 * 8.60). Re above 1e4, 0.6 <= Pr <= 160, L/D above 10.
 */
public final class DittusBoelter {
    private DittusBoelter() {}

    /**
     * Nusselt number of a fluid that is being heated.
     *
     * @param reynolds above 1e4
     * @param prandtl 0.6 to 160
     */
    public static double heating(double reynolds, double prandtl) {
        return 0.023 * Math.pow(reynolds, 0.8) * Math.pow(prandtl, 0.4);
    }

    /**
     * Nusselt number of a fluid that is being cooled.
     *
     * @param reynolds above 1e4
     * @param prandtl 0.6 to 160
     */
    public static double cooling(double reynolds, double prandtl) {
        return 0.023 * Math.pow(reynolds, 0.8) * Math.pow(prandtl, 0.3);
    }
}
