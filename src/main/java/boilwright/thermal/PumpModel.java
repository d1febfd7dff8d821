package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.fluid.Water;
import boilwright.heattransfer.ThermalRadiation;
import boilwright.numerics.OdeSystem;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.StateLayout.Quadrature;
import boilwright.units.PhysicalConstants;

/**
 * The whole rig as one set of differential equations, put together from its blocks: source, boiler wall, oil, vapour column,
 * jets, condensing walls and water. One instance belongs to one run and one thread; the derivative allocates nothing.
 */
final class PumpModel implements OdeSystem {
    /** No boiler wall becomes hotter than a flame. */
    private static final double HOTTEST_WALL_K = 2000;

    final Rig rig;
    final TabulatedFluid fluid;
    final ParameterValues parameters;
    final ColumnGeometry geometry;
    final WallGeometry wallGeometry;
    final VapourColumn column;
    final JetModes jets;
    final CondensingWalls walls;
    final WaterNodes water;
    final SupplyBlock supply;
    final BoilerWall boiler;
    final SourceBlock source;
    final StateLayout layout;
    final OutsideFaces faces;
    final DissolvedGas gas;
    final double chargeKg;
    final double roomK;
    final ForelineBlock foreline;
    /** Foreline pressure at rest, Pa. */
    final double forelinePa;

    private final SurfaceLoss[] wallLoss;
    private final int[] facing;
    private final double[] radiation;
    private final double thinGas;
    private final int[] nodeOfWall;
    /** Conductance of fins under a fan at each wall, W/K. */
    private final double[] finsW;

    private final double fanK;

    private final double[] heatToWall;
    private final double[] cellHeat;
    private final double[] lastState;
    private boolean lastValid;
    /** Made when first asked for: explicit runs do without. */
    private ModelJacobian linear;

    private boolean fanRuns = true;
    private double toWaterW;
    private double toAirW;

    PumpModel(Rig rig, TabulatedFluid fluid, ParameterValues parameters, int cells) {
        this.rig = rig;
        this.fluid = fluid;
        this.parameters = parameters;
        roomK = rig.room().temperatureK();
        foreline = new ForelineBlock(rig);
        forelinePa = foreline.restingPa();
        geometry = new ColumnGeometry(rig, cells);
        wallGeometry = new WallGeometry(rig, geometry.heightM);
        column = new VapourColumn(rig, fluid, parameters, geometry, forelinePa);
        jets = new JetModes(rig, fluid, parameters, column, forelinePa);
        walls = new CondensingWalls(rig, fluid, parameters, wallGeometry);
        water = new WaterNodes(rig, wallGeometry);
        supply = new SupplyBlock(rig, parameters);
        boiler = new BoilerWall(rig, fluid, parameters);
        source = SourceBlock.of(rig, parameters, boiler.halfResistance());
        layout = new StateLayout(
                source.size(), geometry.cells, wallGeometry.count, water.count, supply.size(), foreline.size());
        chargeKg = rig.chargeM3() * fluid.liquidDensity(roomK);
        wallLoss = new SurfaceLoss[wallGeometry.count];
        for (int w = 0; w < wallGeometry.count; w++) {
            wallLoss[w] = new SurfaceLoss(
                    Math.max(0.01, wallGeometry.heightM[w]), rig.body().emissivityOutside(), 0, 1, roomK);
        }
        nodeOfWall = new int[wallGeometry.count];
        java.util.Arrays.fill(nodeOfWall, -1);
        for (int i = 0; i < water.count; i++) {
            if (water.wall(i) >= 0) {
                nodeOfWall[water.wall(i)] = i;
            }
        }
        finsW = BodyFins.conductances(rig, wallGeometry);
        fanK = water.inletK;
        facing = new int[geometry.cells];
        radiation = new double[geometry.cells];
        for (int j = 0; j < geometry.cells; j++) {
            facing[j] = wallGeometry.facing(geometry.midM[j]);
            double ratio = geometry.outerAreaM2[j] / (Math.PI * rig.body().innerDiameterM() * geometry.cellM[j]);
            radiation[j] = PhysicalConstants.STEFAN_BOLTZMANN
                    * ThermalRadiation.effectiveEmissivity(
                            geometry.emissivity[j], rig.body().emissivityInside(), Math.min(1, ratio));
        }
        thinGas = parameters.get(Parameter.THIN_GAS_CONDUCTANCE);
        gas = new DissolvedGas(rig, fluid, parameters);
        faces = new OutsideFaces(this);
        heatToWall = new double[wallGeometry.count];
        cellHeat = new double[geometry.cells];
        lastState = new double[layout.size];
    }

    /** Everything at room temperature, water at its inlet's, the charge full of air. */
    double[] coldState() {
        double[] y = new double[layout.size];
        for (int i = 0; i < layout.fill; i++) {
            if (layout.isTemperature(i)) {
                y[i] = roomK;
            }
        }
        supply.initial(y, layout.supply);
        y[layout.oilMass] = chargeKg;
        y[layout.gas] = 1;
        foreline.initial(y, layout.foreline);
        source.initial(y, layout.source, roomK);
        for (int i = 0; i < water.count; i++) {
            y[layout.water + i] = supply.enteringK(y, layout.supply);
            y[layout.fill + i] = 1;
        }
        return y;
    }

    @Override
    public int size() {
        return layout.size;
    }

    @Override
    public boolean isAutonomous() {
        return true;
    }

    @Override
    public String componentName(int i) {
        if (i == layout.boilerWall) {
            return "boiler wall temperature";
        } else if (i == layout.oil) {
            return "oil temperature";
        } else if (i == layout.oilMass) {
            return "oil mass";
        } else if (i == layout.gas) {
            return "dissolved gas";
        } else if (i < layout.column) {
            return source.stateName(i - layout.source);
        } else if (i < layout.walls) {
            return "temperature of column cell " + (i - layout.column + 1);
        } else if (i < layout.water) {
            return "temperature of body wall " + (i - layout.walls + 1);
        } else if (i < layout.fill) {
            return "water temperature " + (i - layout.water + 1);
        } else if (i < layout.supply) {
            return "water level " + (i - layout.fill + 1);
        } else if (i == layout.foreline && layout.forelineSize > 0) {
            return "foreline pressure";
        } else if (i < layout.quadratures) {
            return supply.stateName(i - layout.supply);
        }
        return StateLayout.Quadrature.values()[i - layout.quadratures].name().toLowerCase(java.util.Locale.ROOT)
                + " energy";
    }

    @Override
    public boolean isAdmissible(double t, double[] y) {
        for (int i = 0; i < layout.quadratures; i++) {
            if (layout.isTemperature(i)) {
                boolean isWater = layout.isWater(i);
                double low = isWater ? Water.LOWEST_K : fluid.lowestTemperature();
                double high = isWater
                        ? Water.HIGHEST_K
                        : i == layout.boilerWall ? HOTTEST_WALL_K : fluid.highestTemperature();
                if (!(y[i] >= low && y[i] <= high)) {
                    return false;
                }
            }
        }
        return y[layout.oilMass] > 0 && forelinePa(y) > 0;
    }

    /** Foreline pressure of a state, Pa. */
    double forelinePa(double[] y) {
        return foreline.pressurePa(y, layout.foreline);
    }

    /** Sets whether the fan turns; fins in still air are not counted. */
    void setFanRuns(boolean on) {
        fanRuns = on;
    }

    /** Forgets the last evaluation, after modes or levels were changed. */
    void modesChanged() {
        lastValid = false;
    }

    /** Solves the vapour, jets and films for a state unless that is the state solved last. */
    void solveFlows(double[] y) {
        boolean sameVapour =
                lastValid && y[layout.oil] == lastState[layout.oil] && same(y, layout.column, layout.walls);
        double against = forelinePa(y);
        sameVapour = sameVapour && against == forelinePa(lastState);
        if (sameVapour && same(y, layout.walls, layout.water)) {
            return;
        }
        lastValid = false;
        if (!sameVapour) {
            column.solve(y[layout.oil], y, layout.column, against);
            jets.against(against);
            jets.measure(column);
        }
        solveWalls(y);
        System.arraycopy(y, 0, lastState, 0, y.length);
        lastValid = true;
    }

    /** Solves the films on the walls for the vapour solved last. */
    void solveWalls(double[] y) {
        walls.solve(column, y[layout.oil], jets.outletPa, y, layout.walls);
    }

    private boolean same(double[] y, int from, int to) {
        return java.util.Arrays.equals(y, from, to, lastState, from, to);
    }

    @Override
    public void jacobian(double t, double[] y, double[] dydt, double[][] jacobian) {
        if (linear == null) {
            linear = new ModelJacobian(this);
        }
        linear.evaluate(y, dydt, jacobian);
    }

    @Override
    public void derivative(double t, double[] y, double[] dydt) {
        solveFlows(y);
        double oilK = y[layout.oil];
        double wallK = y[layout.boilerWall];
        source.evaluate(y, layout.source, wallK, oilK, dydt);
        double delivered = source.deliveredW();
        double boilerLossW = boiler.outsideLossW(wallK, source.flameOn(), source.coversHeatedArea());
        double intoOil = boiler.heatToOilW(wallK, oilK);
        boolean direct = source.heatsLiquid();
        double intoBody = boilerToBodyW(y);
        dydt[layout.boilerWall] = ((direct ? 0 : delivered) - boilerLossW - intoOil - intoBody) / boiler.heatCapacity();
        columnHeat(y, cellHeat);
        for (int j = 0; j < geometry.cells; j++) {
            dydt[layout.column + j] = cellHeat[j] / geometry.heatCapacity[j];
        }
        liquid(y, dydt, intoOil + (direct ? delivered : 0));
        toAirW = boilerLossW;
        for (int w = 0; w < wallGeometry.count; w++) {
            heatToWall[w] += walls.heatW[w];
        }
        alongBody(y, intoBody);
        water.evaluate(y, layout, supply.enteringK(y, layout.supply), dydt, heatToWall);
        supply.evaluate(y, layout.supply, water.streamW(), water.flows(), dydt);
        toWaterW = water.streamW() + water.boiledW();
        toAirW += water.airW();
        for (int w = 0; w < wallGeometry.count; w++) {
            dydt[layout.walls + w] = (heatToWall[w] - bareWallLoss(w, y)) / wallGeometry.heatCapacity[w];
        }
        dydt[layout.quadrature(Quadrature.IN)] = delivered + water.loadW();
        dydt[layout.quadrature(Quadrature.CHILLER)] = supply.removedW();
        dydt[layout.quadrature(Quadrature.SUPPLY_GAIN)] = supply.gainedW();
        dydt[layout.quadrature(Quadrature.STREAM)] = water.streamW();
        dydt[layout.quadrature(Quadrature.WATER)] = toWaterW;
        dydt[layout.quadrature(Quadrature.AIR)] = toAirW;
        dydt[layout.quadrature(Quadrature.FORELINE)] = walls.lossKgPerS() * column.vapourEnthalpy();
        dydt[layout.quadrature(Quadrature.SOURCE_INPUT)] = source.inputW();
    }

    /**
     * Net heat into each column cell, W: condensation, film from above, conduction along the wall, less radiation and thin
     * gas to the body, which is added to the body walls. Flows must have been solved for this state.
     */
    void columnHeat(double[] y, double[] heat) {
        java.util.Arrays.fill(heatToWall, 0);
        double film = 0;
        for (int j = geometry.cells - 1; j >= 0; j--) {
            heat[j] = cellHeat(j, film, y);
            film += column.cellTake[j];
        }
    }

    /** Net heat into cell j with the given film flow arriving from above, W; adds what it gives to the body wall. */
    private double cellHeat(int j, double filmAbove, double[] y) {
        int i = layout.column + j;
        double own = column.cellLiquidEnthalpy(j);
        double heat = column.cellTake[j] * (column.vapourEnthalpy() - own);
        if (j < geometry.cells - 1) {
            heat += filmAbove * (column.cellLiquidEnthalpy(j + 1) - own)
                    + geometry.axialConductance[j] * (y[i + 1] - y[i]);
        }
        if (j > 0) {
            heat += geometry.axialConductance[j - 1] * (y[i - 1] - y[i]);
        }
        double toBody = cellToBody(j, y[i], y[layout.walls + facing[j]]);
        heatToWall[facing[j]] += toBody;
        return heat - toBody;
    }

    /** Heat conducted from the boiler's wall up into the body, W. */
    double boilerToBodyW(double[] y) {
        return wallGeometry.fromBoiler * (y[layout.boilerWall] - y[layout.walls + wallGeometry.upward[0]]);
    }

    private void alongBody(double[] y, double intoBody) {
        int[] upward = wallGeometry.upward;
        heatToWall[upward[0]] += intoBody;
        for (int i = 0; i < upward.length - 1; i++) {
            double up = wallGeometry.alongBody[i] * (y[layout.walls + upward[i]] - y[layout.walls + upward[i + 1]]);
            heatToWall[upward[i]] -= up;
            heatToWall[upward[i + 1]] += up;
        }
    }

    /** Heat conducted along the body into wall w if it had this temperature and its neighbours those of the state, W. */
    double conductedW(int w, double wallK, double[] y) {
        int[] upward = wallGeometry.upward;
        double heat = 0;
        for (int i = 0; i < upward.length; i++) {
            if (upward[i] == w) {
                heat += i == 0
                        ? wallGeometry.fromBoiler * (y[layout.boilerWall] - wallK)
                        : wallGeometry.alongBody[i - 1] * (y[layout.walls + upward[i - 1]] - wallK);
                if (i < upward.length - 1) {
                    heat += wallGeometry.alongBody[i] * (y[layout.walls + upward[i + 1]] - wallK);
                }
            }
        }
        return heat;
    }

    /** Radiation and thin-gas conduction from cell j to the body wall it faces, W. */
    double cellToBody(int j, double cellK, double bodyK) {
        double c2 = cellK * cellK;
        double b2 = bodyK * bodyK;
        return geometry.outerAreaM2[j] * (radiation[j] * (c2 * c2 - b2 * b2) + thinGas * (cellK - bodyK));
    }

    /** Slope of {@link #cellToBody} in the cell's temperature, W/K. */
    double cellToBodySlope(int j, double cellK) {
        return geometry.outerAreaM2[j] * (4 * radiation[j] * cellK * cellK * cellK + thinGas);
    }

    /** The body wall that cell j faces. */
    int facing(int j) {
        return facing[j];
    }

    /** Heat that reheating the returning oil takes from the pool, W. */
    double returnHeatW() {
        double condensedInColumn = 0;
        for (double take : column.cellTake) {
            condensedInColumn += take;
        }
        double heat = condensedInColumn * (walls.oilEnthalpy() - column.cellLiquidEnthalpy(0));
        for (int w = 0; w < wallGeometry.count; w++) {
            heat += walls.condensed[w] * (walls.oilEnthalpy() - walls.returnLiquidEnthalpy[w]);
        }
        return heat;
    }

    /** Heat that evaporation and returning oil take from the pool, W. */
    double oilDemandW() {
        return column.flow() * column.latentHeat() + returnHeatW();
    }

    private void liquid(double[] y, double[] dydt, double intoOil) {
        dydt[layout.oil] = (intoOil - oilDemandW()) / (y[layout.oilMass] * column.liquidSpecificHeat());
        dydt[layout.oilMass] = -walls.lossKgPerS();
        dydt[layout.gas] = gas.rate(y[layout.gas], column.boilingShare(), forelinePa(y));
        foreline.evaluate(y, layout.foreline, -gas.amount() * dydt[layout.gas], dydt);
    }

    /** Loss of wall w to the room by itself: what no jacket covers, or a jacket that has run dry; W, counted. */
    private double bareWallLoss(int w, double[] y) {
        double loss = wallToAirW(w, y[layout.walls + w], bareShare(w, y));
        toAirW += loss;
        return loss;
    }

    private double bareShare(int w, double[] y) {
        int node = nodeOfWall[w];
        return node < 0 || !water.isJacket(node) ? 1 : 1 - Math.max(0, Math.min(1, y[layout.fill + node]));
    }

    /** Loss of a wall to the room over this share of its outside, W; the cap radiates into the chamber, taken as the room. */
    double wallToAirW(int w, double wallK, double bareShare) {
        if (w == wallGeometry.cap) {
            return wallGeometry.innerAreaM2[w] * ThermalRadiation.flux(wallGeometry.emissivityInside[w], wallK, roomK);
        }
        double fan = fanRuns ? finsW[w] * (wallK - fanK) : 0;
        return fan + (bareShare == 0 ? 0 : bareShare * wallGeometry.outerAreaM2[w] * wallLoss[w].flux(wallK));
    }

    /** Node that cools wall w, or -1. */
    int nodeOfWall(int w) {
        return nodeOfWall[w];
    }

    /** Heat into water at the last derivative, W. */
    double toWaterW() {
        return toWaterW;
    }

    /** Heat to the room at the last derivative, W. */
    double toAirW() {
        return toAirW;
    }

    /** Heat stored in everything behind the boiler's outer face, J, from the datum of the liquids. */
    double storedJ(double[] y) {
        double stored =
                boiler.heatCapacity() * y[layout.boilerWall] + y[layout.oilMass] * fluid.liquidEnthalpy(y[layout.oil]);
        for (int j = 0; j < geometry.cells; j++) {
            stored += geometry.heatCapacity[j] * y[layout.column + j];
        }
        for (int w = 0; w < wallGeometry.count; w++) {
            stored += wallGeometry.heatCapacity[w] * y[layout.walls + w];
        }
        for (int i = 0; i < water.count; i++) {
            stored += water.fullMass(i) * y[layout.fill + i] * Water.enthalpy(y[layout.water + i]);
        }
        return stored;
    }
}
