package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.rig.Rig;
import boilwright.thermal.WaterNode.Inflow;
import boilwright.water.CircuitSolver;
import boilwright.water.OperatingPoint;

/**
 * The water in the circuit, one well-mixed node per wall zone or hose, in the order the water meets them. Standing water boils
 * at the room's pressure until the node is dry; then its wall is cooled by air alone.
 */
final class WaterNodes {
    private static final double FLOW_SMALLEST = 1e-12;
    /** How hard a boiling node is held at the boiling point, W/K; large enough to stay within a kelvin. */
    private static final double BOILING_CONDUCTANCE = 2000;

    private static final double LEAST_FILL = 0.02;

    final int count;
    /** What enters while the supply keeps up, K. */
    final double inletK;

    private final WaterNode[] nodes;
    private final Inflow outlet;
    private final OperatingPoint flow;
    private final double massFlow;
    private final SurfaceLoss[] shellLoss;
    private final double[] halfResistance;
    private final double boilingK;
    private final double roomK;
    private boolean running = true;

    // of the last evaluation
    private double streamW;
    private double boiledW;
    private double airW;
    private double loadW;

    WaterNodes(Rig rig, WallGeometry walls) {
        inletK = rig.cooling().inletTemperatureK();
        flow = CircuitSolver.operatingPoint(rig);
        massFlow = flow.massFlowKgPerS();
        boilingK = Water.boilingTemperature(rig.room().pressurePa());
        roomK = rig.room().temperatureK();
        halfResistance = walls.halfResistance;
        WaterPlan.Layout plan = WaterPlan.of(rig, walls, flow);
        nodes = plan.nodes().toArray(new WaterNode[0]);
        outlet = plan.outlet();
        count = nodes.length;
        shellLoss = new SurfaceLoss[count];
        for (int i = 0; i < count; i++) {
            if (nodes[i].jacket()) {
                shellLoss[i] = new SurfaceLoss(nodes[i].heightM(), rig.body().emissivityOutside(), 0, 1, roomK);
            }
        }
    }

    /** Node i. */
    WaterNode node(int i) {
        return nodes[i];
    }

    /** What flows where while the supply runs. */
    OperatingPoint flow() {
        return flow;
    }

    /** Wall that node i cools, or -1. */
    int wall(int i) {
        return nodes[i].wall();
    }

    /** True when node i is a jacket, which covers its wall's outside. */
    boolean isJacket(int i) {
        return nodes[i].jacket();
    }

    /** Water in node i when full, kg. */
    double fullMass(int i) {
        return nodes[i].massKg();
    }

    /** Stops or starts the water. */
    void setRunning(boolean on) {
        running = on;
    }

    /** Water through the circuit now, kg/s. */
    double massFlowNow() {
        return running ? massFlow : 0;
    }

    private double massFlowNow(int i) {
        return running ? nodes[i].massFlow() : 0;
    }

    /** True when water flows through node i. */
    boolean flows(int i) {
        return massFlowNow(i) >= FLOW_SMALLEST;
    }

    /** True when water flows through the circuit. */
    boolean flows() {
        return massFlowNow() >= FLOW_SMALLEST && count > 0;
    }

    /** True when water flows through every node, so that none can boil dry. */
    boolean flowsEverywhere() {
        for (int i = 0; i < count; i++) {
            if (!flows(i)) {
                return false;
            }
        }
        return flows();
    }

    /** Heat transfer coefficient between wall and water of node i, W/(m2 K). */
    double coefficient(int i, double wallK, double waterK) {
        return nodes[i].coefficient(wallK, waterK, massFlowNow(i), boilingK);
    }

    /** Heat from its wall into node i when full, W. */
    double fromWallW(int i, double wallK, double waterK) {
        WaterNode node = nodes[i];
        if (node.wall() < 0) {
            return 0;
        }
        double film = 1 / (coefficient(i, wallK, waterK) * node.wettedAreaM2());
        return (wallK - waterK) / (film + node.bondResistance() + halfResistance[node.wall()]);
    }

    /** Heat lost by node i to the room through shell or hose, W. */
    double toRoomW(int i, double waterK) {
        WaterNode node = nodes[i];
        double shell = node.jacket() ? node.shellAreaM2() * shellLoss[i].flux(waterK) : 0;
        return shell + node.airConductance() * (waterK - roomK);
    }

    /** Heat that node i takes from a part that is not computed, W. */
    double loadW(int i) {
        return nodes[i].loadW();
    }

    /** Heat that boiling carries off, W: nothing below the boiling point, then steeply more. */
    double boilingW(double waterK) {
        double over = Math.max(0, waterK - boilingK);
        return BOILING_CONDUCTANCE * over * (1 + over * over * over);
    }

    /** Heat taken up by the stream through node i, W. */
    double streamW(int i, double upstreamEnthalpy, double waterK) {
        return flows(i) ? massFlowNow(i) * (Water.enthalpy(waterK) - upstreamEnthalpy) : 0;
    }

    /** Enthalpy of the water that reaches node i, J/kg, when this enters the circuit. */
    double upstreamEnthalpy(int i, double[] state, int start, double enteringK) {
        return mixed(nodes[i].from(), nodes[i].share(), state, start, enteringK);
    }

    /** Temperatures between which the water that reaches node i lies, K: [low, high]. */
    void upstreamRange(int i, double[] state, int start, double enteringK, double[] range) {
        range[0] = nodes[i].from().length == 0 ? enteringK : Double.POSITIVE_INFINITY;
        range[1] = nodes[i].from().length == 0 ? enteringK : Double.NEGATIVE_INFINITY;
        for (int from : nodes[i].from()) {
            range[0] = Math.min(range[0], state[start + from]);
            range[1] = Math.max(range[1], state[start + from]);
        }
    }

    private static double mixed(int[] from, double[] share, double[] state, int start, double enteringK) {
        double enthalpy = 0;
        double fromSupply = 1;
        for (int j = 0; j < from.length; j++) {
            enthalpy += share[j] * Water.enthalpy(state[start + from[j]]);
            fromSupply -= share[j];
        }
        return from.length == 0 || fromSupply > 1e-12 ? enthalpy + fromSupply * Water.enthalpy(enteringK) : enthalpy;
    }

    /** Temperature of the mixed water that leaves the circuit, K. */
    double outletK(double[] state, int start, double enteringK) {
        double kelvin = 0;
        double fromSupply = 1;
        for (int j = 0; j < outlet.from().length; j++) {
            kelvin += outlet.share()[j] * state[start + outlet.from()[j]];
            fromSupply -= outlet.share()[j];
        }
        return kelvin + Math.max(0, fromSupply) * enteringK;
    }

    /** Hottest water that flows anywhere in the circuit, K: where branches differ it is hotter than what leaves. */
    double hottestK(double[] state, int start, double enteringK) {
        double hottest = outletK(state, start, enteringK);
        for (int i = 0; i < count; i++) {
            if (flows(i)) {
                hottest = Math.max(hottest, state[start + i]);
            }
        }
        return hottest;
    }

    /** Boiling point at the room's pressure, K. */
    double boilingK() {
        return boilingK;
    }

    /**
     * Adds the water's rates and takes its heat from the walls.
     *
     * @param y state
     * @param at where what lies
     * @param enteringK temperature of what enters, K
     * @param dydt receives the rates of water temperatures and levels
     * @param heatToWall net heat into each wall, W; what the water takes is subtracted
     */
    void evaluate(double[] y, StateLayout at, double enteringK, double[] dydt, double[] heatToWall) {
        streamW = 0;
        boiledW = 0;
        airW = 0;
        loadW = 0;
        for (int i = 0; i < count; i++) {
            int w = nodes[i].wall();
            double waterK = y[at.water + i];
            double fill = Math.max(0, Math.min(1, y[at.fill + i]));
            double fromWall = 0;
            if (w >= 0) {
                fromWall = fill * fromWallW(i, y[at.walls + w], waterK);
                heatToWall[w] -= fromWall;
            }
            double toRoom = toRoomW(i, waterK);
            double stream = streamW(i, upstreamEnthalpy(i, y, at.water, enteringK), waterK);
            double boiling = boilingW(waterK) * Math.min(1, fill / LEAST_FILL);
            double heatCapacity = nodes[i].massKg() * Math.max(LEAST_FILL, fill) * Water.specificHeat(waterK);
            dydt[at.water + i] = (fromWall + nodes[i].loadW() - toRoom - stream - boiling) / heatCapacity;
            double steam = flows(i) ? 0 : boiling / Water.latentHeat(waterK);
            dydt[at.fill + i] = -steam / nodes[i].massKg();
            streamW += stream;
            boiledW += boiling + steam * Water.enthalpy(waterK);
            airW += toRoom;
            loadW += nodes[i].loadW();
        }
    }

    /** Heat that the stream carried off at the last evaluation, W. */
    double streamW() {
        return streamW;
    }

    /** Heat that went with steam at the last evaluation, W. */
    double boiledW() {
        return boiledW;
    }

    /** Heat that went to the room at the last evaluation, W. */
    double airW() {
        return airW;
    }

    /** Heat from parts that are not computed, W. */
    double loadW() {
        return loadW;
    }
}
