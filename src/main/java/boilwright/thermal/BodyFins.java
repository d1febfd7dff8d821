package boilwright.thermal;

import boilwright.fluid.Air;
import boilwright.heattransfer.AnnularFin;
import boilwright.heattransfer.FinnedSurface;
import boilwright.heattransfer.PlateFinChannel;
import boilwright.heattransfer.StraightFin;
import boilwright.rig.Body;
import boilwright.rig.Rig;
import boilwright.rig.Supply;

/**
 * Round fins on the body across which a fan blows, as air between parallel plates (Teertstra and others 2000) as long as the fins
 * are wide, with Schmidt's efficiency. It adds to the body's own loss by natural convection and radiation; when the fan stands
 * still the fins are not counted, which is on the safe side.
 */
final class BodyFins {
    private final Supply.FinsAndFan fins;
    private final double innerRadiusM;
    private final double outerRadiusM;

    private BodyFins(Supply.FinsAndFan fins, Body body) {
        this.fins = fins;
        innerRadiusM = body.innerDiameterM() / 2 + body.wallThicknessM();
        outerRadiusM = innerRadiusM + fins.finHeightM();
    }

    /**
     * Conductance from each zone of the body to the air of the fan, W/K; zero for rigs without fins and for walls that are no
     * zones.
     */
    static double[] conductances(Rig rig, WallGeometry walls) {
        double[] perZone = new double[walls.count];
        rig.cooling().supply().fins().ifPresent(fins -> {
            BodyFins body = new BodyFins(fins, rig.body());
            for (int k = 0; k < walls.zones; k++) {
                perZone[k] = body.conductance(walls.heightM[k]);
            }
        });
        return perZone;
    }

    private double conductance(double heightM) {
        double airK = fins.temperatureK();
        double gap = fins.finPitchM() - fins.finThicknessM();
        double kinematic = Air.viscosity(airK) / Air.density(airK);
        double channel = PlateFinChannel.channelReynolds(fins.airSpeedMPerS(), gap, 2 * outerRadiusM, kinematic);
        double h = PlateFinChannel.nusselt(channel, Air.prandtl(airK)) * Air.conductivity(airK) / gap;
        if (h == 0) {
            return 0;
        }
        double count = heightM / fins.finPitchM();
        double tip = outerRadiusM + fins.finThicknessM() / 2;
        double finArea = 2 * Math.PI * (tip * tip - innerRadiusM * innerRadiusM) * count;
        double root = 2 * Math.PI * innerRadiusM * gap * count;
        double parameter = StraightFin.parameter(h, fins.finMaterial().conductivity(), fins.finThicknessM());
        double one = AnnularFin.efficiency(parameter, innerRadiusM, tip);
        return h * (finArea + root) * FinnedSurface.efficiency(finArea, finArea + root, one);
    }
}
