package boilwright.thermal;

import boilwright.fluid.Water;
import boilwright.numerics.Roots;
import java.util.function.DoubleUnaryOperator;

/**
 * Temperatures of body walls and water at rest for given vapour flows: one bracketed root per wall with the water's root
 * inside it, swept from the top down until nothing moves, because vapour goes down while water may go either way.
 */
final class SteadyWalls {
    private static final int MOST_SWEEPS = 200;
    private static final double ROOT_TOLERANCE = 1e-12;
    private static final double SETTLED_K = 1e-9;

    private final PumpModel model;
    private final StateLayout layout;
    private final DoubleUnaryOperator wallBalance = this::wallBalance;
    private final DoubleUnaryOperator waterBalance = this::waterBalance;

    // the wall under way
    private double[] y;
    private int wall;
    private int node;
    private double upstreamK;
    private double trialWallK;
    private double vapour;
    private double vapourPa;
    private double waterK;

    SteadyWalls(PumpModel model) {
        this.model = model;
        layout = model.layout;
    }

    /** Brings walls and water of y to rest for the flows solved last; returns the largest change of a wall, K. */
    double settle(double[] state) {
        y = state;
        double first = 0;
        model.walls.begin(model.column, y[layout.oil]);
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double change = sweep();
            first = Math.max(first, change);
            if (change < SETTLED_K) {
                break;
            }
        }
        return first;
    }

    private double sweep() {
        WallGeometry g = model.wallGeometry;
        VapourColumn column = model.column;
        double change = 0;
        int top = g.zones - 1;
        double spill = model.walls.spillShare();
        double passing = 0;
        if (g.cap >= 0) {
            vapour = spill * column.stageFlow[top];
            vapourPa = model.walls.wallPressure(0, column.stagePa[top]);
            change = Math.max(change, settleWall(g.cap));
            passing = vapour - model.walls.condensed[g.cap];
        }
        for (int k = top; k >= 0; k--) {
            vapour = column.stageFlow[k] * (k == top ? 1 - spill : 1) + passing;
            vapourPa = model.walls.wallPressure(model.jets.outletPa[k], column.stagePa[k]);
            change = Math.max(change, settleWall(k));
            passing = vapour - model.walls.condensed[k];
        }
        if (g.lower >= 0) {
            vapour = 0;
            vapourPa = 1;
            change = Math.max(change, settleWall(g.lower));
        }
        return change;
    }

    private double settleWall(int w) {
        wall = w;
        node = model.nodeOfWall(w);
        upstreamK = node < 0 ? model.roomK : model.water.upstreamK(node, y, layout.water);
        double low = Math.min(model.roomK, model.water.inletK) - 5;
        double high = Math.max(Math.max(Math.max(y[layout.oil], y[layout.boilerWall]), model.roomK), upstreamK) + 5;
        double found = Roots.bracketed(wallBalance, low, high, ROOT_TOLERANCE, 0, "body wall at rest");
        wallBalance(found);
        double change = Math.abs(found - y[layout.walls + w]);
        y[layout.walls + w] = found;
        if (node >= 0) {
            change = Math.max(change, Math.abs(waterK - y[layout.water + node]));
            y[layout.water + node] = waterK;
        }
        return change;
    }

    private double wallBalance(double wallK) {
        trialWallK = wallK;
        double heat = model.conductedW(wall, wallK, y);
        if (wall != model.wallGeometry.lower) {
            model.walls.solveWall(wall, vapour, vapourPa, wallK, wall != model.wallGeometry.cap);
            heat += model.walls.heatW[wall];
        }
        for (int j = 0; j < model.geometry.cells; j++) {
            if (model.facing(j) == wall) {
                heat += model.cellToBody(j, y[layout.column + j], wallK);
            }
        }
        double bare = 1;
        if (node >= 0) {
            double fill = y[layout.fill + node];
            settleWater();
            heat -= fill * model.wallToWater(node, wallK, waterK);
            bare = model.water.isJacket(node) ? 1 - fill : 1;
        }
        return heat - model.wallToAirW(wall, wallK, bare);
    }

    private void settleWater() {
        double low = Math.max(Water.LOWEST_K, Math.min(Math.min(upstreamK, trialWallK), model.roomK) - 1);
        double high = Math.min(Water.HIGHEST_K, Math.max(Math.max(upstreamK, trialWallK), model.roomK) + 1);
        waterK = Roots.bracketed(waterBalance, low, high, ROOT_TOLERANCE, 0, "water at rest");
    }

    private double waterBalance(double t) {
        double fill = y[layout.fill + node];
        return fill * model.wallToWater(node, trialWallK, t)
                - model.water.shellLossW(node, t)
                - model.water.streamW(upstreamK, t)
                - model.water.boilingW(t);
    }
}
