package boilwright.water;

import boilwright.heattransfer.AnnulusFriction;
import boilwright.heattransfer.ChurchillFriction;
import boilwright.heattransfer.DarcyWeisbach;
import boilwright.heattransfer.MishraGupta;

/**
 * Wall friction in one passage, walls smooth: {@link ChurchillFriction} in a straight tube, {@link MishraGupta} in a coil, {@link
 * AnnulusFriction} in a jacket's gap. Turns tighter than those relations know count as the tightest they know. What the flow
 * needs to settle behind the inlet is left out.
 */
final class Friction {
    private static final double SMOOTH = 0;
    private static final double TIGHTEST_CURVATURE = 0.15;

    private final Passage passage;
    private final double curvature;
    private final double viscosity;
    private final double speedPerFlow;
    private final double reynoldsPerFlow;

    Friction(Passage passage, double density, double viscosity) {
        this.passage = passage;
        this.viscosity = viscosity;
        double area = passage.areaM2();
        speedPerFlow = 1 / (density * area);
        reynoldsPerFlow = passage.hydraulicDiameterM() / (area * viscosity);
        curvature = Math.min(TIGHTEST_CURVATURE, passage.hydraulicDiameterM() / passage.coilDiameterM());
    }

    /** Pressure drop, Pa. */
    double dropPa(double massFlow) {
        return DarcyWeisbach.pressureDrop(
                timesReynolds(reynolds(massFlow)),
                viscosity,
                massFlow * speedPerFlow,
                passage.lengthM(),
                passage.hydraulicDiameterM());
    }

    /** Reynolds number on bore or hydraulic diameter. */
    double reynolds(double massFlow) {
        return massFlow * reynoldsPerFlow;
    }

    private double timesReynolds(double reynolds) {
        if (passage.isGap()) {
            return AnnulusFriction.timesReynolds(reynolds, passage.diameterRatio(), SMOOTH);
        }
        return curvature > 0
                ? MishraGupta.timesReynolds(reynolds, curvature, SMOOTH)
                : ChurchillFriction.timesReynolds(reynolds, SMOOTH);
    }
}
