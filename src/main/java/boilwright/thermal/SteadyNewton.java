package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.numerics.DenseLu;
import java.util.Arrays;

/**
 * The whole rig at rest as one set of equations: oil, boiler wall, column, body and water together, by Newton's method from
 * a fixed start, at first as an implicit march in pseudo time (the diagonal carries one over a time step that grows). Much
 * faster than settling one part inside the other; where it does not come to rest, the caller does that instead.
 */
final class SteadyNewton {
    private static final int MOST_ROUNDS = 80;
    private static final double FIRST_STEP_S = 100;
    private static final double LONGEST_STEP_S = 1e6;
    private static final double GROWTH = 20;
    private static final double LONGEST_OIL_STEP_K = 15;
    private static final double LONGEST_STEP_K = 60;
    /** A plain Newton step of this size leaves an error of about its square. */
    private static final double SETTLED_K = 1e-6;

    private static final double RELATIVE = 1e-7;

    private final PumpModel model;
    private final StateLayout at;
    private final ModelJacobian linear;
    private final int[] unknown;
    private final double[][] jacobian;
    private final double[][] matrix;
    private final double[] rates;
    private final double[] step;
    private final DenseLu lu;
    private int rounds;

    SteadyNewton(PumpModel model) {
        this.model = model;
        at = model.layout;
        linear = new ModelJacobian(model);
        unknown = new int[2 + at.fill - at.column];
        unknown[0] = at.boilerWall;
        unknown[1] = at.oil;
        for (int i = 2; i < unknown.length; i++) {
            unknown[i] = at.column + i - 2;
        }
        jacobian = new double[at.size][at.size];
        matrix = new double[unknown.length][unknown.length];
        rates = new double[at.size];
        step = new double[unknown.length];
        lu = new DenseLu(unknown.length);
    }

    /** Rounds the last solution took. */
    int rounds() {
        return rounds;
    }

    /** A warm pump from which the march starts, the same for every question. */
    void start(double[] y) {
        double oil = model.fluid.saturationTemperature(model.jets.requiredPa);
        y[at.oil] = oil;
        y[at.boilerWall] = oil + 20;
        Arrays.fill(y, at.column, at.walls, oil - 2);
        Arrays.fill(y, at.walls, at.water, model.water.inletK + 10);
        Arrays.fill(y, at.water, at.fill, model.water.inletK + 2);
        y[at.gas] = 0;
    }

    /** Brings y to rest with what the source delivers; false when that was not reached. Near: y is almost there. */
    boolean rest(double[] y, boolean near) {
        return solve(y, -1, near);
    }

    /** Brings y to the rest at which throat k carries its full flow, whatever heat that takes; false when not reached. */
    boolean fullFlow(double[] y, int k, boolean near) {
        return solve(y, k, near);
    }

    private boolean solve(double[] y, int throat, boolean near) {
        double pseudoStep = near ? LONGEST_STEP_S : FIRST_STEP_S;
        double before = Double.POSITIVE_INFINITY;
        try {
            for (rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
                model.derivative(0, y, rates);
                linear.evaluate(y, rates, jacobian);
                model.solveFlows(y);
                double norm = assemble(y, throat, pseudoStep);
                if (!lu.factor(matrix)) {
                    return false;
                }
                lu.solve(step);
                double largest = apply(y);
                if (Double.isNaN(largest)) {
                    return false;
                }
                if (largest < SETTLED_K && pseudoStep >= LONGEST_STEP_S) {
                    model.modesChanged();
                    model.solveFlows(y);
                    return true;
                }
                pseudoStep = norm < 2 * before
                        ? Math.min(LONGEST_STEP_S, pseudoStep * GROWTH)
                        : Math.max(FIRST_STEP_S / GROWTH, pseudoStep / GROWTH);
                before = norm;
            }
        } catch (ComputationException outOfRange) {
            return false;
        }
        return false;
    }

    /** Fills matrix and right-hand side; returns the heat that is out of balance, W. */
    private double assemble(double[] y, int throat, double pseudoStep) {
        double perStep = pseudoStep >= LONGEST_STEP_S ? 0 : 1 / pseudoStep;
        double norm = 0;
        for (int r = 0; r < unknown.length; r++) {
            double[] row = matrix[r];
            double[] from = jacobian[unknown[r]];
            for (int c = 0; c < unknown.length; c++) {
                row[c] = -from[unknown[c]];
            }
            row[r] += perStep;
            step[r] = rates[unknown[r]];
        }
        if (throat >= 0) {
            // the oil is as hot as full flow asks; its balance gives the boiler wall, or there is nothing to balance
            int free = model.source.heatsLiquid() ? 1 : 0;
            double[] row = matrix[free];
            for (int c = 0; c < unknown.length; c++) {
                row[c] = -linear.throatFlow[throat][unknown[c]] / model.jets.fullFlow[throat];
            }
            step[free] = model.jets.fraction[throat] - 1;
        } else if (!model.source.heatsLiquid()) {
            boilerRow(y, perStep);
        }
        for (int r = 0; r < unknown.length; r++) {
            norm += Math.abs(step[r]);
        }
        return norm;
    }

    /** The boiler wall's balance with what the source delivers at rest, not at this moment. */
    private void boilerRow(double[] y, double perStep) {
        double here = boilerExcess(y, y[at.boilerWall], y[at.oil]);
        double capacity = model.boiler.heatCapacity();
        double dT = RELATIVE * y[at.boilerWall];
        double[] row = matrix[0];
        Arrays.fill(row, 0);
        row[0] = perStep - (boilerExcess(y, y[at.boilerWall] + dT, y[at.oil]) - here) / (dT * capacity);
        row[1] = -(boilerExcess(y, y[at.boilerWall], y[at.oil] + dT) - here) / (dT * capacity);
        int body = 2 + at.walls - at.column + model.wallGeometry.upward[0];
        double held = y[unknown[body]];
        y[unknown[body]] = held + dT;
        row[body] = -(boilerExcess(y, y[at.boilerWall], y[at.oil]) - here) / (dT * capacity);
        y[unknown[body]] = held;
        step[0] = here / capacity;
    }

    /** What the source delivers beyond what the wall passes on, W. */
    private double boilerExcess(double[] y, double wallK, double oilK) {
        double held = y[at.boilerWall];
        y[at.boilerWall] = wallK;
        double taken = model.boiler.heatToOilW(wallK, oilK)
                + model.boiler.outsideLossW(wallK, model.source.flameOn(), model.source.coversHeatedArea())
                + model.boilerToBodyW(y);
        y[at.boilerWall] = held;
        return model.source.steadyDeliveredW(wallK + taken * model.boiler.halfResistance(), oilK) - taken;
    }

    /** Moves the state, shorter where the oil or a cell would jump; returns the largest change wanted, K. */
    private double apply(double[] y) {
        double largest = 0;
        for (double s : step) {
            largest = Math.max(largest, Math.abs(s));
        }
        if (!(largest < Double.POSITIVE_INFINITY)) {
            return Double.NaN;
        }
        double share = Math.min(1, Math.min(LONGEST_OIL_STEP_K / Math.abs(step[1]), LONGEST_STEP_K / largest));
        double oilStep = share * step[1];
        for (int i = 0; i < unknown.length; i++) {
            int s = unknown[i];
            double next = y[s] + share * step[i];
            if (s >= at.column && s < at.walls && model.column.flow() > 0) {
                next = belowSaturation(y[s], next, model.column.cellSaturationK[s - at.column], oilStep);
            }
            y[s] = next;
        }
        return largest;
    }

    /** Keeps a cell that condenses from passing saturation, which moves with the oil, in one go. */
    private static double belowSaturation(double old, double next, double saturation, double oilStep) {
        double there = saturation + oilStep;
        if (old >= saturation) {
            return Math.max(next, there - 0.5);
        }
        return next >= there ? there - 0.1 * (saturation - old) : next;
    }
}
