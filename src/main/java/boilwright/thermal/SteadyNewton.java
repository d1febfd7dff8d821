package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.fluid.Water;
import boilwright.numerics.DenseLu;
import java.util.Arrays;

/**
 * The whole rig at rest as one set of equations: oil, boiler wall, column, body and water together, by Newton's method, as
 * an implicit march in pseudo time (the diagonal carries one over a time step that grows). In haste every step counts, which
 * is quick and mostly enough; with care a step counts only when its own equation is nearly solved, which also ends where
 * cells stand at saturation (C. T. Kelley, D. E. Keyes, "Convergence analysis of pseudo-transient continuation", SIAM J.
 * Numer. Anal. 35 (1998) 508-523; from memory). Much faster than settling one part inside the other; where it does not
 * come to rest, the caller does that instead.
 */
final class SteadyNewton {
    /** Rounds in haste within which most rigs are at rest. */
    private static final int HASTY_ROUNDS = 24;

    private static final int MOST_ROUNDS = 300;
    private static final double FIRST_STEP_S = 100;
    private static final double LONGEST_STEP_S = 1e6;
    private static final double GROWTH = 20;
    private static final double SHORTENING = 10;
    /** Shorter than any part of a rig needs: a cell reacts within 0.2 s. */
    private static final double SHORTEST_STEP_S = 1e-3;
    /** Heat out of balance, W, about which nothing can be said for the last digits of the vapour's flow. */
    private static final double NO_HEAT_W = 1e-6;

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
    private final double[] from;
    private int throat;
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
        from = new double[at.size];
        lu = new DenseLu(unknown.length);
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

    /** How a state is brought to rest. */
    enum Way {
        /** From a state that is almost at rest. */
        NEAR,
        HASTY,
        CAREFUL
    }

    /** Brings y to rest with what the source delivers; false when that was not reached. */
    boolean rest(double[] y, Way way) {
        return fullFlow(y, -1, way);
    }

    /** Brings y to the rest at which throat k carries its full flow, whatever heat that takes; false when not reached. */
    boolean fullFlow(double[] y, int k, Way way) {
        throat = k;
        try {
            return way == Way.CAREFUL ? careful(y) : hasty(y, way == Way.NEAR ? LONGEST_STEP_S : FIRST_STEP_S);
        } catch (ComputationException outOfRange) {
            return false;
        }
    }

    private boolean hasty(double[] y, double firstStep) {
        double pseudoStep = firstStep;
        double before = Double.POSITIVE_INFINITY;
        for (rounds = 1; rounds <= HASTY_ROUNDS; rounds++) {
            model.derivative(0, y, rates);
            linear.evaluate(y, rates, jacobian);
            model.solveFlows(y);
            double norm = assemble(y, pseudoStep);
            double largest = step(y);
            if (Double.isNaN(largest)) {
                return false;
            }
            if (largest < SETTLED_K && pseudoStep >= LONGEST_STEP_S) {
                return atRest(y);
            }
            pseudoStep = norm < 2 * before
                    ? Math.min(LONGEST_STEP_S, pseudoStep * GROWTH)
                    : Math.max(FIRST_STEP_S / GROWTH, pseudoStep / GROWTH);
            before = norm;
        }
        return false;
    }

    private boolean careful(double[] y) {
        double pseudoStep = FIRST_STEP_S;
        System.arraycopy(y, 0, from, 0, y.length);
        double norm = leftOver(y, LONGEST_STEP_S);
        for (rounds = 1; rounds <= MOST_ROUNDS; rounds++) {
            linear.evaluate(y, rates, jacobian);
            System.arraycopy(y, 0, from, 0, y.length);
            double left;
            while (true) {
                model.solveFlows(y);
                assemble(y, pseudoStep);
                double largest = step(y);
                if (Double.isNaN(largest)) {
                    return false;
                }
                if (largest < SETTLED_K && pseudoStep >= LONGEST_STEP_S) {
                    return atRest(y);
                }
                left = leftOver(y, pseudoStep);
                if (left <= norm || norm < NO_HEAT_W || pseudoStep <= SHORTEST_STEP_S) {
                    break;
                }
                pseudoStep /= SHORTENING;
                System.arraycopy(from, 0, y, 0, y.length);
                model.derivative(0, y, rates);
            }
            if (!(left < Double.POSITIVE_INFINITY)) {
                return false;
            }
            double growth = growth(left / norm);
            System.arraycopy(y, 0, from, 0, y.length);
            norm = left(y, LONGEST_STEP_S);
            pseudoStep = Math.min(LONGEST_STEP_S, pseudoStep * growth);
        }
        return false;
    }

    /** How much longer the next step may be after one that left this share of what was out of balance before. */
    private static double growth(double share) {
        if (share < 0.1) {
            return GROWTH;
        } else if (share < 0.5) {
            return 4;
        }
        // a step that hardly counted is followed by a shorter one: at kinks the march must come down by itself
        return share < 0.9 ? 1.5 : 0.7;
    }

    private boolean atRest(double[] y) {
        model.modesChanged();
        model.solveFlows(y);
        return true;
    }

    /** Solves the equations put together last and moves the state; the largest change wanted, K, or not a number. */
    private double step(double[] y) {
        if (!lu.factor(matrix)) {
            return Double.NaN;
        }
        lu.solve(step);
        return apply(y);
    }

    /** Heat, W, that the implicit step from the state left last leaves over; infinite where there is no such state. */
    private double leftOver(double[] y, double pseudoStep) {
        if (!model.isAdmissible(0, y)) {
            return Double.POSITIVE_INFINITY;
        }
        try {
            model.derivative(0, y, rates);
        } catch (ComputationException outOfRange) {
            return Double.POSITIVE_INFINITY;
        }
        return left(y, pseudoStep);
    }

    private double left(double[] y, double pseudoStep) {
        double perStep = perStep(pseudoStep);
        double left = 0;
        for (int r = 0; r < unknown.length; r++) {
            int s = unknown[r];
            left += heatCapacity(y, s) * Math.abs(rate(y, r) - perStep * (y[s] - from[s]));
        }
        return left;
    }

    /** What stands on the right of equation r, K/s. */
    private double rate(double[] y, int r) {
        if (throat >= 0 && r == freeRow()) {
            return model.jets.fraction[throat] - 1;
        } else if (throat < 0 && r == 0 && !model.source.heatsLiquid()) {
            return boilerExcess(y, y[at.boilerWall], y[at.oil]) / model.boiler.heatCapacity();
        }
        return rates[unknown[r]];
    }

    /** Heat capacity behind state s, J/K. */
    private double heatCapacity(double[] y, int s) {
        if (s == at.boilerWall) {
            return model.boiler.heatCapacity();
        } else if (s == at.oil) {
            return y[at.oilMass] * model.column.liquidSpecificHeat();
        } else if (s < at.walls) {
            return model.geometry.heatCapacity[s - at.column];
        } else if (s < at.water) {
            return model.wallGeometry.heatCapacity[s - at.walls];
        }
        return model.water.fullMass(s - at.water) * Water.specificHeat(y[s]);
    }

    private static double perStep(double pseudoStep) {
        return pseudoStep >= LONGEST_STEP_S ? 0 : 1 / pseudoStep;
    }

    /** The equation that full flow takes the place of: the oil is as hot as that asks, its balance gives the boiler wall. */
    private int freeRow() {
        return model.source.heatsLiquid() ? 1 : 0;
    }

    /** Fills matrix and right-hand side; returns the heat that is out of balance, W. */
    private double assemble(double[] y, double pseudoStep) {
        double perStep = perStep(pseudoStep);
        double norm = 0;
        for (int r = 0; r < unknown.length; r++) {
            double[] row = matrix[r];
            double[] slopes = jacobian[unknown[r]];
            for (int c = 0; c < unknown.length; c++) {
                row[c] = -slopes[unknown[c]];
            }
            row[r] += perStep;
            step[r] = rates[unknown[r]];
        }
        if (throat >= 0) {
            int free = freeRow();
            double[] row = matrix[free];
            for (int c = 0; c < unknown.length; c++) {
                row[c] = -linear.throatFlow[throat][unknown[c]] / model.jets.fullFlow[throat];
            }
            step[free] = model.jets.fraction[throat] - 1;
        } else if (!model.source.heatsLiquid()) {
            boilerRow(y, perStep);
            if (perStep == 0 && model.column.flow() == 0) {
                stillRow(y);
            }
        }
        for (int r = 0; r < unknown.length; r++) {
            norm += Math.abs(step[r]);
        }
        return norm;
    }

    /**
     * Without vapour the oil is as warm as the boiler's wall. Said so, since what passes between them goes with the power of
     * 4/3 of their difference: its slope vanishes there and Newton's method would creep.
     */
    private void stillRow(double[] y) {
        double[] row = matrix[1];
        Arrays.fill(row, 0);
        row[0] = -1;
        row[1] = 1;
        step[1] = y[at.boilerWall] - y[at.oil];
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
