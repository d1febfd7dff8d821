package boilwright.thermal;

import boilwright.fluid.WorkingFluid;
import boilwright.heattransfer.StillLayerDiffusion;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;

/** Air dissolved in the oil: froths out while it is far above saturation or the pool boils, else diffuses through it. */
final class DissolvedGas {
    /** Supersaturation below which bubbles no longer form in a still pool, Pa (10 mbar; engineering judgement). */
    private static final double FROTH_LIMIT_PA = 1000;

    private static final double FROTH_BLEND_PA = 100;

    private final double roomPa;
    private final double amount;
    private final double frothTime;
    private final double diffusionTime;

    DissolvedGas(Rig rig, WorkingFluid fluid, ParameterValues parameters) {
        roomPa = rig.room().pressurePa();
        amount = rig.chargeM3() * fluid.dissolvedAir().orElse(parameters.get(Parameter.DISSOLVED_AIR)) * roomPa;
        frothTime = parameters.get(Parameter.DEGASSING_TIME);
        double depth = rig.chargeM3() / rig.boiler().surfaceAreaM2();
        diffusionTime = StillLayerDiffusion.timeConstant(depth, parameters.get(Parameter.DISSOLVED_GAS_DIFFUSIVITY));
    }

    /** All the air that the cold charge holds, Pa m3 at room temperature. */
    double amount() {
        return amount;
    }

    /** How fast the content, 0 to 1, changes, 1/s, at a share of the boiling onset reached. */
    double rate(double content, double boiling, double forelinePa) {
        double stirred = Math.max(froth(content, forelinePa), boiling);
        return -content * (stirred / frothTime + (1 - stirred) / diffusionTime);
    }

    /** Slope of the rate in the share of boiling reached, 1/s. */
    double byBoiling(double content, double boiling, double forelinePa) {
        return froth(content, forelinePa) > boiling ? 0 : -content * (1 / frothTime - 1 / diffusionTime);
    }

    /** Slope of the rate in the content itself, 1/s. */
    double byContent(double content, double boiling, double forelinePa) {
        double froth = froth(content, forelinePa);
        boolean frothing = froth > boiling;
        double stirred = frothing ? froth : boiling;
        double slope = frothing ? froth * (1 - froth) * roomPa / FROTH_BLEND_PA : 0;
        return -(stirred / frothTime + (1 - stirred) / diffusionTime)
                - content * slope * (1 / frothTime - 1 / diffusionTime);
    }

    private double froth(double content, double forelinePa) {
        double over = content * roomPa - forelinePa;
        return 1 / (1 + Math.exp(-(over - FROTH_LIMIT_PA) / FROTH_BLEND_PA));
    }
}
