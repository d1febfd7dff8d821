package boilwright.heattransfer;

/**
 * Natural convection from an upright wall to air (any ideal gas): {@link ChurchillChuPlate} with the expansion
 * coefficient 1/T_film of an ideal gas. Same source and range.
 */
public final class NaturalConvectionInAir {
    private NaturalConvectionInAir() {}

    /**
     * Mean heat transfer coefficient of the wall.
     *
     * @param surfaceK wall temperature, K
     * @param airK air temperature away from the wall, K
     * @param heightM height of the wall, m
     * @param kinematicViscosity of the air at the mean of both temperatures, m2/s
     * @param diffusivity thermal diffusivity of the air there, m2/s
     * @param conductivity thermal conductivity of the air there, W/(m K)
     * @return W/(m2 K); for a height of 0.1 to 1 m and 10 to 200 K, about 3 to 10
     */
    public static double coefficient(
            double surfaceK,
            double airK,
            double heightM,
            double kinematicViscosity,
            double diffusivity,
            double conductivity) {
        double expansion = 2 / (surfaceK + airK);
        double rayleigh = Rayleigh.number(expansion, surfaceK - airK, heightM, kinematicViscosity, diffusivity);
        return ChurchillChuPlate.nusselt(rayleigh, kinematicViscosity / diffusivity) * conductivity / heightM;
    }
}
