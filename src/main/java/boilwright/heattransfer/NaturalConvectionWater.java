package boilwright.heattransfer;

/**
 * Natural convection from an upright wall into the water of a jacket: the floor under which heat transfer does not fall
 * when the water stands still. {@link ChurchillChuPlate} with the properties of water. It takes the water as deep
 * compared with the boundary layer; {@link #boundaryLayerFits} tells whether a gap is wide enough for that. In a
 * narrower gap conduction across it takes over, which the laminar limit of {@link AnnulusFlow} holds.
 */
public final class NaturalConvectionWater {
    private NaturalConvectionWater() {}

    /**
     * Mean heat transfer coefficient of the wall.
     *
     * @param dT difference between wall and water, K; its sign is not used
     * @param heightM height of the wetted wall, m
     * @param expansion thermal expansion coefficient of the water, 1/K; its size is used (it is negative below 4 C)
     * @param kinematicViscosity m2/s
     * @param diffusivity thermal diffusivity, m2/s
     * @param conductivity W/(m K)
     * @return W/(m2 K); 100 to 1000 for tenths of a metre and 1 to 50 K
     */
    public static double coefficient(
            double dT,
            double heightM,
            double expansion,
            double kinematicViscosity,
            double diffusivity,
            double conductivity) {
        double rayleigh = Rayleigh.number(Math.abs(expansion), dT, heightM, kinematicViscosity, diffusivity);
        return ChurchillChuPlate.nusselt(rayleigh, kinematicViscosity / diffusivity) * conductivity / heightM;
    }
}
