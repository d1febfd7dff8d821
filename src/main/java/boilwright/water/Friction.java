package boilwright.water;

import boilwright.gasflow.DarcyFriction;
import boilwright.heattransfer.AnnulusTurbulent;

/**
 * Wall friction in one passage, f (L/dh) m^2/(2 rho A^2), smooth walls. The Darcy factor f is that of S. W. Churchill, Chem. Eng. 84
 * (24) (1977) 91 for a round tube. A jacket's gap takes it at the Reynolds number of equal laminar friction (O. C. Jones and J. C.
 * M. Leung, J. Fluids Eng. 103 (1981) 615, from memory): exact while laminar.
 */
final class Friction {
    /** Below this the formula is 64/Re to the last digit, and at no flow it would not be a number. */
    private static final double CREEPING = 1;

    private final double square;
    private final double reynoldsPerFlow;
    private final double roundReynoldsPerFlow;

    Friction(Passage passage, double density, double viscosity) {
        double area = passage.areaM2();
        square = passage.lengthM() / (2 * passage.hydraulicDiameterM() * density * area * area);
        reynoldsPerFlow = passage.hydraulicDiameterM() / (area * viscosity);
        roundReynoldsPerFlow = passage.isGap()
                ? AnnulusTurbulent.equivalentReynolds(reynoldsPerFlow, passage.diameterRatio())
                : reynoldsPerFlow;
    }

    /** Pressure drop, Pa. */
    double dropPa(double massFlow) {
        double reynolds = massFlow * roundReynoldsPerFlow;
        if (reynolds < CREEPING) {
            return 64 / roundReynoldsPerFlow * massFlow * square;
        }
        return DarcyFriction.churchill(reynolds, 0) * massFlow * massFlow * square;
    }

    /** Reynolds number on bore or hydraulic diameter. */
    double reynolds(double massFlow) {
        return massFlow * reynoldsPerFlow;
    }
}
