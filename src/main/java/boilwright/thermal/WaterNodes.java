package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.heattransfer.AnnulusFlow;
import boilwright.heattransfer.AnnulusWall;
import boilwright.heattransfer.NaturalConvectionWater;
import boilwright.heattransfer.TubeFlow;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.water.CircuitSolver;
import java.util.ArrayList;
import java.util.List;

/**
 * The water in jackets and coils, one well-mixed node per wall zone it touches, in the order the water meets them. Standing
 * water boils at the room's pressure until the node is dry; then its wall is cooled by air alone.
 */
final class WaterNodes {
    private static final double FLOW_SMALLEST = 1e-12;
    /** How hard a boiling node is held at the boiling point, W/K; large enough to stay within a kelvin. */
    private static final double BOILING_CONDUCTANCE = 2000;

    private record Node(
            boolean jacket,
            int wall,
            double flowAreaM2,
            double hydraulicM,
            double diameterRatio,
            double lengthM,
            double heightM,
            double wettedAreaM2,
            double bondResistance,
            double massKg,
            double shellAreaM2) {}

    final int count;
    final double inletK;
    final double massFlow;
    private final Node[] nodes;
    private final SurfaceLoss[] shellLoss;
    private final double boilingK;
    private final double inletEnthalpy;

    WaterNodes(Rig rig, WallGeometry walls) {
        Cooling cooling = rig.cooling();
        inletK = cooling.inletTemperatureK();
        massFlow = CircuitSolver.operatingPoint(rig).massFlowKgPerS();
        inletEnthalpy = Water.enthalpy(inletK);
        boilingK = Water.boilingTemperature(rig.room().pressurePa());
        List<Node> list = new ArrayList<>();
        for (Cooling.Element element : cooling.elements()) {
            if (element instanceof Cooling.Jacket jacket) {
                for (String stage : jacket.covers()) {
                    list.add(jacketNode(rig, walls, jacket, zone(rig, stage)));
                }
            } else if (element instanceof Cooling.SolderedCoil coil) {
                double height = coil.covers().stream()
                        .mapToDouble(s -> walls.heightM[zone(rig, s)])
                        .sum();
                for (String stage : coil.covers()) {
                    int k = zone(rig, stage);
                    double length = coil.tubeLengthM() * walls.heightM[k] / height;
                    list.add(tubeNode(k, coil.tubeInnerDiameterM(), length, coil.bondConductance()));
                }
            } else if (element instanceof Cooling.CapCoil coil) {
                list.add(tubeNode(walls.cap, coil.tubeInnerDiameterM(), coil.tubeLengthM(), coil.bondConductance()));
            }
        }
        nodes = list.toArray(new Node[0]);
        count = nodes.length;
        shellLoss = new SurfaceLoss[count];
        for (int i = 0; i < count; i++) {
            if (nodes[i].jacket) {
                shellLoss[i] = new SurfaceLoss(
                        nodes[i].heightM,
                        rig.body().emissivityOutside(),
                        0,
                        1,
                        rig.room().temperatureK());
            }
        }
    }

    private static int zone(Rig rig, String stage) {
        for (int k = 0; k < rig.stages().size(); k++) {
            if (rig.stages().get(k).name().equals(stage)) {
                return k;
            }
        }
        throw new IllegalArgumentException(stage);
    }

    private static Node jacketNode(Rig rig, WallGeometry walls, Cooling.Jacket jacket, int k) {
        double inner = rig.body().innerDiameterM() + 2 * rig.body().wallThicknessM();
        double outer = inner + 2 * jacket.gapM();
        double area = Math.PI / 4 * (outer * outer - inner * inner);
        double height = walls.heightM[k];
        return new Node(
                true,
                k,
                area,
                2 * jacket.gapM(),
                inner / outer,
                height,
                height,
                walls.outerAreaM2[k],
                0,
                area * height * Water.density(293.15),
                Math.PI * (outer + 2 * jacket.shellThicknessM()) * height);
    }

    private static Node tubeNode(int wall, double bore, double length, double bondConductance) {
        double area = Math.PI / 4 * bore * bore;
        return new Node(
                false,
                wall,
                area,
                bore,
                1,
                length,
                bore,
                Math.PI * bore * length,
                1 / (bondConductance * length),
                area * length * Water.density(293.15),
                0);
    }

    /** Wall that node i cools. */
    int wall(int i) {
        return nodes[i].wall;
    }

    /** True when node i is a jacket, which covers its wall's outside. */
    boolean isJacket(int i) {
        return nodes[i].jacket;
    }

    /** Water in node i when full, kg. */
    double fullMass(int i) {
        return nodes[i].massKg;
    }

    /** Outside area through which wall and node i exchange heat, m2. */
    double wettedAreaM2(int i) {
        return nodes[i].wettedAreaM2;
    }

    /** Conductance between the wall's middle and the water of node i when full, W/K. */
    double conductance(int i, double wallK, double waterK, double wallHalfResistance) {
        Node node = nodes[i];
        double filmK = Math.min(Water.HIGHEST_K, Math.max(Water.LOWEST_K, (Math.min(wallK, boilingK) + waterK) / 2));
        double conductivity = Water.conductivity(filmK);
        double kinematic = Water.viscosity(filmK) / Water.density(filmK);
        double prandtl = Water.prandtl(filmK);
        double floor = NaturalConvectionWater.coefficient(
                        wallK - waterK,
                        node.heightM,
                        Water.expansion(filmK),
                        kinematic,
                        kinematic / prandtl,
                        conductivity)
                * node.hydraulicM
                / conductivity;
        double reynolds = massFlow * node.hydraulicM / (node.flowAreaM2 * kinematic * Water.density(filmK));
        double ratio = Math.min(1, node.hydraulicM / node.lengthM);
        double nusselt = node.jacket
                ? AnnulusFlow.nusselt(AnnulusWall.INNER, node.diameterRatio, reynolds, prandtl, ratio, floor)
                : TubeFlow.nusselt(reynolds, prandtl, ratio, floor);
        double h = nusselt * conductivity / node.hydraulicM;
        return 1 / (1 / (h * node.wettedAreaM2) + node.bondResistance + wallHalfResistance);
    }

    /** Heat lost by the shell of node i to the room, W. */
    double shellLossW(int i, double waterK) {
        return nodes[i].jacket ? nodes[i].shellAreaM2 * shellLoss[i].flux(waterK) : 0;
    }

    /** Heat that boiling carries off, W: nothing below the boiling point, then steeply more. */
    double boilingW(double waterK) {
        double over = Math.max(0, waterK - boilingK);
        return BOILING_CONDUCTANCE * over * (1 + over * over * over);
    }

    /** Heat taken up by the stream between two water temperatures, W. */
    double streamW(double inK, double outK) {
        return massFlow < FLOW_SMALLEST ? 0 : massFlow * (Water.enthalpy(outK) - Water.enthalpy(inK));
    }

    /** Water temperature before node i: the inlet's, or that of the node before. */
    double upstreamK(int i, double[] state, int start) {
        return i == 0 ? inletK : state[start + i - 1];
    }

    /** Boiling point at the room's pressure, K. */
    double boilingK() {
        return boilingK;
    }

    /** True when water flows. */
    boolean flows() {
        return massFlow >= FLOW_SMALLEST && count > 0;
    }

    /** Enthalpy at the inlet, J/kg. */
    double inletEnthalpy() {
        return inletEnthalpy;
    }
}
