package boilwright.heattransfer;

/** Conduction through the wall of a tube or hose, ln(do/di)/(2 pi k L) (Incropera, Bergman, Lavine, DeWitt, eq. 3.33). */
public final class CylinderWall {
    private CylinderWall() {}

    /**
     * Resistance of the wall, K/W.
     *
     * @param conductivity of the wall, W/(m K)
     * @param innerDiameterM m
     * @param outerDiameterM at least the inner one, m
     * @param lengthM m
     */
    public static double resistance(double conductivity, double innerDiameterM, double outerDiameterM, double lengthM) {
        return Math.log(outerDiameterM / innerDiameterM) / (2 * Math.PI * conductivity * lengthM);
    }
}
