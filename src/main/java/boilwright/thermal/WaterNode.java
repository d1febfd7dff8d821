package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.heattransfer.AnnulusFlow;
import boilwright.heattransfer.AnnulusWall;
import boilwright.heattransfer.CoilFlow;
import boilwright.heattransfer.NaturalConvectionWater;

/**
 * A well-mixed stretch of water: the part of a jacket or coil that touches one wall, or a tube that touches none.
 *
 * @param element index of the cooling element it belongs to
 * @param jacket true for a jacket, which covers its wall's outside
 * @param wall index of the wall it cools, or -1
 * @param massFlow water that passes while the supply runs, kg/s
 * @param from nodes whose water it receives; empty: from the supply
 * @param share what each of them contributes, adding up to one; less than one: the rest comes from the supply
 * @param flowAreaM2 cross section of the water, m2
 * @param hydraulicM hydraulic diameter, m
 * @param diameterRatio inner over outer diameter of a jacket's gap; 1 for tubes
 * @param curvature bore over diameter of a coil's centre line; 0 for jackets and straight tubes
 * @param lengthM length in the direction of flow, m
 * @param heightM height over which standing water circulates, m
 * @param wettedAreaM2 area through which the wall and the water exchange heat, m2
 * @param bondResistance resistance of a soldered joint, K/W
 * @param massKg water in it when full, kg
 * @param shellAreaM2 outside of a jacket's shell, m2
 * @param loadW heat that comes from a part that is not computed, W
 * @param airConductance heat exchanged with the room per kelvin, W/K
 */
record WaterNode(
        int element,
        boolean jacket,
        int wall,
        double massFlow,
        int[] from,
        double[] share,
        double flowAreaM2,
        double hydraulicM,
        double diameterRatio,
        double curvature,
        double lengthM,
        double heightM,
        double wettedAreaM2,
        double bondResistance,
        double massKg,
        double shellAreaM2,
        double loadW,
        double airConductance) {

    /** A stretch of jacket over one wall. */
    static WaterNode jacket(
            Inflow inflow, int element, int wall, double innerM, double gapM, double shellM, double heightM) {
        double outer = innerM + 2 * gapM;
        double area = Math.PI / 4 * (outer * outer - innerM * innerM);
        return new WaterNode(
                element,
                true,
                wall,
                inflow.massFlow(),
                inflow.from(),
                inflow.share(),
                area,
                2 * gapM,
                innerM / outer,
                0,
                heightM,
                heightM,
                Math.PI * innerM * heightM,
                0,
                area * heightM * Water.density(293.15),
                Math.PI * (outer + 2 * shellM) * heightM,
                0,
                0);
    }

    /** A stretch of tube on one wall, or on none. */
    static WaterNode tube(
            Inflow inflow,
            int element,
            int wall,
            double bore,
            double curvature,
            double length,
            double bondConductance,
            double loadW,
            double airConductance) {
        double area = Math.PI / 4 * bore * bore;
        return new WaterNode(
                element,
                false,
                wall,
                inflow.massFlow(),
                inflow.from(),
                inflow.share(),
                area,
                bore,
                1,
                curvature,
                length,
                bore,
                Math.PI * bore * length,
                wall < 0 ? 0 : 1 / (bondConductance * length),
                area * length * Water.density(293.15),
                0,
                loadW,
                airConductance);
    }

    /**
     * The water that reaches a node.
     *
     * @param massFlow kg/s
     * @param from nodes it comes from
     * @param share what each contributes
     */
    record Inflow(double massFlow, int[] from, double[] share) {}

    /** Heat transfer coefficient between wall and water, W/(m2 K). */
    double coefficient(double wallK, double waterK, double massFlowNow, double boilingK) {
        double filmK = Math.min(Water.HIGHEST_K, Math.max(Water.LOWEST_K, (Math.min(wallK, boilingK) + waterK) / 2));
        double conductivity = Water.conductivity(filmK);
        double viscosity = Water.viscosity(filmK);
        double kinematic = viscosity / Water.density(filmK);
        double prandtl = Water.prandtl(filmK);
        double floor = NaturalConvectionWater.coefficient(
                        wallK - waterK, heightM, Water.expansion(filmK), kinematic, kinematic / prandtl, conductivity)
                * hydraulicM
                / conductivity;
        double reynolds = massFlowNow * hydraulicM / (flowAreaM2 * viscosity);
        double ratio = Math.min(1, hydraulicM / lengthM);
        double nusselt = jacket
                ? AnnulusFlow.nusselt(AnnulusWall.INNER, diameterRatio, reynolds, prandtl, ratio, floor)
                : CoilFlow.nusselt(reynolds, prandtl, curvature, ratio, floor);
        return nusselt * conductivity / hydraulicM;
    }
}
