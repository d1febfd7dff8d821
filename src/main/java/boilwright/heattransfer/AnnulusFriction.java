package boilwright.heattransfer;

/**
 * Friction in a concentric annular gap, laminar and turbulent: {@link ChurchillFriction} at the Reynolds number that stands
 * for the same friction in a round tube, {@link AnnulusTurbulent#equivalentReynolds} (O. C. Jones and J. C. M. Leung, J.
 * Fluids Eng. 103 (1981) 615). In laminar flow this is the exact solution, 96/Re in a narrow gap.
 */
public final class AnnulusFriction {
    private AnnulusFriction() {}

    /**
     * Darcy friction factor times Reynolds number, both on the hydraulic diameter do - di.
     *
     * @param reynolds on the hydraulic diameter, at least 0
     * @param diameterRatio di/do, above 0 to 1
     * @param relativeRoughness height of the roughness over the hydraulic diameter, 0 to 0.05
     */
    public static double timesReynolds(double reynolds, double diameterRatio, double relativeRoughness) {
        double share = AnnulusTurbulent.equivalentReynolds(1, diameterRatio);
        return ChurchillFriction.timesReynolds(reynolds * share, relativeRoughness) / share;
    }
}
