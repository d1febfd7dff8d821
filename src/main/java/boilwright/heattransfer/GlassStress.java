package boilwright.heattransfer;

/**
 * Thermal stress in a flat or thin tubular wall that cannot bend: steady through-wall difference (S. Timoshenko and J. N.
 * Goodier, Theory of Elasticity, ch. on thermal stress) and sudden cooling of the surface (S. S. Manson, NACA Report 1170
 * (1954); constants of the fit from memory). Tension is positive: the cold face.
 */
public final class GlassStress {
    private GlassStress() {}

    /**
     * Tension in the cold face under a steady linear temperature difference, alpha E dT/(2 (1 - nu)). The hot face carries
     * the same in compression.
     *
     * @param expansion linear expansion coefficient, 1/K
     * @param youngsModulus Pa
     * @param poisson Poisson's ratio
     * @param dT difference between the faces, K
     * @return Pa
     */
    public static double coldFace(double expansion, double youngsModulus, double poisson, double dT) {
        return expansion * youngsModulus * dT / (2 * (1 - poisson));
    }

    /**
     * Greatest surface tension after one face of a wall of even temperature meets a colder fluid, alpha E dT/(1 - nu)/(1.5 +
     * 3.25/Bi - 0.5 exp(-16/Bi)). Manson's plate is cooled from both sides and Bi taken on half its thickness; a wall
     * cooled from one side and held straight behaves as that half, so Bi = h t/k on the whole wall.
     *
     * @param expansion linear expansion coefficient, 1/K
     * @param youngsModulus Pa
     * @param poisson Poisson's ratio
     * @param dT wall temperature before, less the fluid's, K
     * @param biot h t/k, at least 0; 0 gives no stress, infinity the full alpha E dT/(1 - nu)
     * @return Pa
     */
    public static double coldShock(double expansion, double youngsModulus, double poisson, double dT, double biot) {
        double full = expansion * youngsModulus * dT / (1 - poisson);
        return full / (1.5 + 3.25 / biot - 0.5 * Math.exp(-16 / biot));
    }
}
