package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.Water;
import boilwright.numerics.Roots;
import boilwright.units.PhysicalConstants;
import java.util.function.DoubleUnaryOperator;

/**
 * Temperatures of body walls and water at rest for given vapour flows: Newton's method on all walls at once, with what they
 * conduct to each other and from the boiler exactly in the matrix and each wall's own balance (film, radiation, water, air)
 * by its slope. Vapour that passes a zone and water that passes from one node to the next follow from round to round.
 */
final class SteadyWalls {
    private static final int MOST_ROUNDS = 300;
    private static final int NEWTON_ROUNDS = 40;
    private static final double ROOT_TOLERANCE = 1e-12;
    private static final double SETTLED_K = 1e-9;
    private static final double SLOPE_STEP_K = 1e-3;
    private static final double LONGEST_STEP_K = 60;

    private final PumpModel model;
    private final StateLayout layout;
    private final int[] upward;
    private final double[] net;
    private final double[] slope;
    private final double[] change;
    private final double[] pivot;
    private final double[] vapour;
    private final double[] vapourPa;
    private final DoubleUnaryOperator waterBalance = this::waterBalance;

    private final boolean idleBoiler;
    private double idleStep;

    // the wall under way
    private double[] y;
    private int node;
    private double upstreamEnthalpy;
    private final double[] upstreamRange = new double[2];
    private double trialWallK;
    private double waterK;

    SteadyWalls(PumpModel model) {
        this.model = model;
        layout = model.layout;
        upward = model.wallGeometry.upward;
        idleBoiler = model.source.heatsLiquid();
        int count = model.wallGeometry.count;
        net = new double[count];
        slope = new double[count];
        change = new double[count];
        pivot = new double[count];
        vapour = new double[count];
        vapourPa = new double[count];
    }

    /** Brings walls and water of y to rest for the flows solved last; returns the largest change of the first round, K. */
    double settle(double[] state) {
        y = state;
        double first = 0;
        model.walls.begin(model.column, y[layout.oil]);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double largest = round(round < NEWTON_ROUNDS ? 1 : 0.3);
            first = Math.max(first, largest);
            if (largest < SETTLED_K) {
                return first;
            }
        }
        throw new ComputationException(Message.of(
                MessageKey.WALLS_NOT_AT_REST,
                Double.toString(y[layout.oil] - PhysicalConstants.ZERO_CELSIUS_K),
                Integer.toString(MOST_ROUNDS)));
    }

    private double round(double damping) {
        WallGeometry g = model.wallGeometry;
        VapourColumn column = model.column;
        int top = g.zones - 1;
        double spill = model.walls.spillShare();
        double passing = 0;
        double largest = 0;
        if (g.cap >= 0) {
            vapour[g.cap] = spill * column.stageFlow[top];
            vapourPa[g.cap] = model.walls.wallPressure(0, column.stagePa[top]);
            largest = Math.max(largest, balance(g.cap));
            passing = vapour[g.cap] - model.walls.condensed[g.cap];
        }
        for (int k = top; k >= 0; k--) {
            vapour[k] = column.stageFlow[k] * (k == top ? 1 - spill : 1) + passing;
            vapourPa[k] = model.walls.wallPressure(model.jets.outletPa[k], column.stagePa[k]);
            largest = Math.max(largest, balance(k));
            passing = vapour[k] - model.walls.condensed[k];
        }
        if (g.lower >= 0) {
            largest = Math.max(largest, balance(g.lower));
        }
        largest = Math.max(largest, hoses());
        chain();
        if (g.cap >= 0) {
            change[g.cap] = -net[g.cap] / slope[g.cap];
        }
        if (idleBoiler) {
            y[layout.boilerWall] += damping * Math.max(-LONGEST_STEP_K, Math.min(LONGEST_STEP_K, idleStep));
            largest = Math.max(largest, Math.abs(idleStep));
        }
        for (int w = 0; w < g.count; w++) {
            double step = damping * Math.max(-LONGEST_STEP_K, Math.min(LONGEST_STEP_K, change[w]));
            double moved = clamped(y[layout.walls + w] + step);
            largest = Math.max(largest, Math.abs(moved - y[layout.walls + w]));
            y[layout.walls + w] = moved;
        }
        return largest;
    }

    private double clamped(double wallK) {
        double coldest = Math.max(model.fluid.lowestTemperature(), Math.min(model.roomK, model.water.inletK) - 5);
        double hottest = Math.min(
                model.fluid.highestTemperature(),
                Math.max(Math.max(y[layout.oil], y[layout.boilerWall]), Math.max(model.roomK, model.water.inletK)) + 5);
        return Math.max(coldest, Math.min(hottest, wallK));
    }

    /** Net heat of wall w at its temperature and how it falls with it; settles its water. Returns the water's change, K. */
    private double balance(int w) {
        node = model.nodeOfWall(w);
        if (node >= 0) {
            upstream();
        }
        double wallK = y[layout.walls + w];
        double warmer = own(w, wallK + SLOPE_STEP_K);
        double here = own(w, wallK);
        slope[w] = Math.min(-1e-9, (warmer - here) / SLOPE_STEP_K);
        net[w] = here;
        if (node < 0) {
            return 0;
        }
        double moved = Math.abs(waterK - y[layout.water + node]);
        y[layout.water + node] = waterK;
        return moved;
    }

    /** Everything wall w gains and loses at this temperature but for conduction along the body, W. */
    private double own(int w, double wallK) {
        double heat = 0;
        if (w != model.wallGeometry.lower) {
            model.walls.solveWall(w, vapour[w], vapourPa[w], wallK, w != model.wallGeometry.cap);
            heat += model.walls.heatW[w];
        }
        for (int j = 0; j < model.geometry.cells; j++) {
            if (model.facing(j) == w) {
                heat += model.cellToBody(j, y[layout.column + j], wallK);
            }
        }
        double bare = 1;
        if (node >= 0) {
            double fill = y[layout.fill + node];
            trialWallK = wallK;
            settleWater();
            heat -= fill * model.water.fromWallW(node, wallK, waterK);
            bare = model.water.isJacket(node) ? 1 - fill : 1;
        }
        return heat - model.wallToAirW(w, wallK, bare);
    }

    /**
     * Thomas' algorithm for the walls of the body, which conduct to each other and from the boiler. A boiler wall that no
     * source heats finds its own temperature together with them.
     */
    private void chain() {
        double fromBoiler = model.wallGeometry.fromBoiler;
        double boilerPivot = 0;
        double boilerChange = 0;
        if (idleBoiler) {
            double wallK = y[layout.boilerWall];
            double here = idleBoilerW(wallK);
            boilerPivot = Math.min(-1e-9, (idleBoilerW(wallK + SLOPE_STEP_K) - here) / SLOPE_STEP_K) - fromBoiler;
            boilerChange = -here + model.boilerToBodyW(y);
        }
        for (int i = 0; i < upward.length; i++) {
            int w = upward[i];
            double below = i == 0 ? fromBoiler : model.wallGeometry.alongBody[i - 1];
            double above = i == upward.length - 1 ? 0 : model.wallGeometry.alongBody[i];
            pivot[i] = slope[w] - below - above;
            change[w] = -net[w] - model.conductedW(w, y[layout.walls + w], y);
            if (i > 0) {
                double factor = below / pivot[i - 1];
                pivot[i] -= factor * below;
                change[w] -= factor * change[upward[i - 1]];
            } else if (idleBoiler) {
                double factor = below / boilerPivot;
                pivot[i] -= factor * below;
                change[w] -= factor * boilerChange;
            }
        }
        for (int i = upward.length - 1; i >= 0; i--) {
            int w = upward[i];
            double next = i == upward.length - 1 ? 0 : model.wallGeometry.alongBody[i] * change[upward[i + 1]];
            change[w] = (change[w] - next) / pivot[i];
        }
        idleStep = idleBoiler ? (boilerChange - fromBoiler * change[upward[0]]) / boilerPivot : 0;
    }

    /** What a boiler wall that no source heats gains from oil and room, W. */
    private double idleBoilerW(double wallK) {
        return -model.boiler.heatToOilW(wallK, y[layout.oil])
                - model.boiler.outsideLossW(wallK, false, model.source.coversHeatedArea());
    }

    private void upstream() {
        double enteringK = model.supply.enteringK(y, layout.supply);
        upstreamEnthalpy = model.water.upstreamEnthalpy(node, y, layout.water, enteringK);
        model.water.upstreamRange(node, y, layout.water, enteringK, upstreamRange);
    }

    /** Settles the water that touches no wall; returns its largest change, K. */
    private double hoses() {
        double largest = 0;
        for (int i = 0; i < layout.waterCount; i++) {
            if (model.water.wall(i) < 0) {
                node = i;
                upstream();
                trialWallK = upstreamRange[1];
                settleWater();
                largest = Math.max(largest, Math.abs(waterK - y[layout.water + i]));
                y[layout.water + i] = waterK;
            }
        }
        return largest;
    }

    private void settleWater() {
        double coldest = Math.min(Math.min(upstreamRange[0], trialWallK), model.roomK) - 1;
        double hottest = Math.max(Math.max(upstreamRange[1], trialWallK), model.roomK) + 1;
        double low = Math.max(Water.LOWEST_K, coldest);
        double high = model.water.loadW(node) > 0 ? Water.HIGHEST_K : Math.min(Water.HIGHEST_K, hottest);
        waterK = Roots.bracketed(waterBalance, low, high, ROOT_TOLERANCE, 0, "water at rest");
    }

    private double waterBalance(double t) {
        double fill = y[layout.fill + node];
        return fill * model.water.fromWallW(node, trialWallK, t)
                + model.water.loadW(node)
                - model.water.toRoomW(node, t)
                - model.water.streamW(node, upstreamEnthalpy, t)
                - model.water.boilingW(t);
    }
}
