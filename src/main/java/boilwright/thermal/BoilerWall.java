package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.heattransfer.PoolBoiling;
import boilwright.heattransfer.TurbulentPool;
import boilwright.numerics.Roots;
import boilwright.rig.Boiler;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.function.DoubleUnaryOperator;

/**
 * The boiler's wall between source and oil: half its resistance to each side of a lump, on the inside natural convection
 * and boiling blended without a switch, on the outside convection and radiation to the room.
 */
final class BoilerWall {
    private static final double ROOT_TOLERANCE = 1e-11;

    private final TabulatedFluid fluid;
    private final double boilingFactor;
    private final double halfResistance;
    private final double wettedAreaM2;
    private final double heatedAreaM2;
    private final double outsideAreaM2;
    private final double heatCapacity;
    private final SurfaceLoss loss;
    private final DoubleUnaryOperator wallBalance = this::wallBalance;
    private final DoubleUnaryOperator coolingBalance = this::coolingBalance;
    private final DoubleUnaryOperator fluxBalance = this::fluxBalance;

    // the state under way
    private double convection;
    private double driveK;
    private double flux;
    private double boilingCoefficient;
    private double innerK;

    BoilerWall(Rig rig, TabulatedFluid fluid, ParameterValues parameters) {
        Boiler boiler = rig.boiler();
        this.fluid = fluid;
        boilingFactor = parameters.get(Parameter.BOILING_HEAT_TRANSFER_FACTOR);
        wettedAreaM2 = boiler.wettedAreaM2();
        heatedAreaM2 = boiler.heatedAreaM2();
        outsideAreaM2 = boiler.outsideAreaM2();
        halfResistance = boiler.wallThicknessM() / (2 * boiler.material().conductivity() * heatedAreaM2);
        double mass = boiler.wallMassKg()
                .orElse((heatedAreaM2 + outsideAreaM2)
                        * boiler.wallThicknessM()
                        * boiler.material().density());
        heatCapacity = mass * boiler.material().specificHeat();
        loss = new SurfaceLoss(
                boiler.innerDiameterM(),
                boiler.emissivity(),
                boiler.insulationThicknessM(),
                boiler.insulationConductivity(),
                rig.room().temperatureK());
    }

    double heatCapacity() {
        return heatCapacity;
    }

    /** Resistance of half the heated wall, K/W. */
    double halfResistance() {
        return halfResistance;
    }

    /** Temperature of the inner face at the last evaluation, K. */
    double innerFaceK() {
        return innerK;
    }

    /** Temperature that can be touched outside, K. */
    double touchK(double wallK) {
        return loss.surfaceTemperature(wallK);
    }

    /**
     * Loss of the outside to the room, W. With a flame only what exceeds the loss at 100 C counts, because the measured
     * efficiency holds the rest; without a covering source the heated area loses too.
     */
    double outsideLossW(double wallK, boolean flameOn, boolean covered) {
        if (flameOn) {
            return Math.max(0, outsideAreaM2 * (loss.flux(wallK) - loss.flux(FlameSource.REFERENCE_VESSEL_K)));
        }
        return (outsideAreaM2 + (covered ? 0 : heatedAreaM2)) * loss.flux(wallK);
    }

    /** Heat from the wall's middle into the oil, W; negative when the oil is hotter. */
    double heatToOilW(double wallK, double oilK) {
        driveK = wallK - oilK;
        if (driveK == 0) {
            innerK = wallK;
            return 0;
        }
        prepare(oilK);
        if (driveK < 0) {
            return coolingOil(wallK);
        }
        double dT = Roots.bracketed(wallBalance, 0, driveK, ROOT_TOLERANCE, 0, "inner face of the boiler");
        double heat = (driveK - dT) / halfResistance;
        innerK = wallK - heat * halfResistance;
        return heat;
    }

    private double coolingOil(double wallK) {
        // no boiling on a wall colder than the oil
        double cold = -driveK;
        double dT = Roots.bracketed(coolingBalance, 0, cold, ROOT_TOLERANCE, 0, "inner face of the boiler");
        double heat = (cold - dT) / halfResistance;
        innerK = wallK + heat * halfResistance;
        return -heat;
    }

    private double coolingBalance(double x) {
        return (-driveK - x) / halfResistance - convection * Math.cbrt(x) * x * wettedAreaM2;
    }

    /** Natural convection as h = convection * dT^(1/3): Nu = 0.15 Ra^(1/3) does not depend on the length. */
    private void prepare(double oilK) {
        double density = fluid.liquidDensity(oilK);
        double conductivity = fluid.liquidConductivity(oilK);
        convection = TurbulentPool.liquidGroup(
                conductivity,
                fluid.liquidExpansion(oilK),
                fluid.liquidViscosity(oilK) / density,
                conductivity / (density * fluid.liquidSpecificHeat(oilK)));
    }

    private double wallBalance(double dT) {
        double q = (driveK - dT) / (halfResistance * wettedAreaM2);
        return q - coefficient(q, dT) * dT;
    }

    private double coefficient(double q, double dT) {
        double natural = convection * Math.cbrt(dT);
        double boiling = boilingFactor * PoolBoiling.coefficient(Math.max(0, q));
        return PoolBoiling.withNaturalConvection(natural, boiling);
    }

    /** Temperature of the wall's middle at which this heat passes into the oil, K. */
    double wallForHeat(double heatW, double oilK) {
        if (heatW == 0) {
            innerK = oilK;
            return oilK;
        }
        prepare(oilK);
        flux = Math.abs(heatW) / wettedAreaM2;
        boilingCoefficient = heatW > 0 ? boilingFactor * PoolBoiling.coefficient(flux) : 0;
        double dT = Roots.bracketed(
                fluxBalance, 0, naturalDifference(flux), ROOT_TOLERANCE, 0, "temperature difference to the oil");
        innerK = oilK + Math.signum(heatW) * dT;
        return innerK + heatW * halfResistance;
    }

    /** Difference that natural convection alone would need: never less than the real one. */
    private double naturalDifference(double q) {
        return Math.pow(q / convection, 0.75);
    }

    private double fluxBalance(double dT) {
        return PoolBoiling.withNaturalConvection(convection * Math.cbrt(dT), boilingCoefficient) * dT - flux;
    }
}
