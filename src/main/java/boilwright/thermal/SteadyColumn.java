package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;

/**
 * Column temperatures at rest for a given oil temperature and given body walls: Newton with the tridiagonal part of the
 * Jacobian, the vapour solved anew each round. Where that does not come down (a front that stands in the column) the same
 * matrix with the cells' heat capacity over a pseudo time step is used, which is an implicit Euler march to rest.
 */
final class SteadyColumn {
    private static final int MOST_ROUNDS = 400;
    private static final double FIRST_PSEUDO_STEP_S = 100;
    /** Rounds of plain Newton before it may be called too slow. */
    private static final int NEWTON_ROUNDS = 12;

    private final PumpModel model;
    private final int start;
    private final int n;
    private final double[] heat;
    private final double[] below;
    private final double[] diagonal;
    private final double[] above;
    private final double[] change;

    SteadyColumn(PumpModel model) {
        this.model = model;
        start = model.layout.column;
        n = model.geometry.cells;
        heat = new double[n];
        below = new double[n];
        diagonal = new double[n];
        above = new double[n];
        change = new double[n];
    }

    /**
     * Brings the cells of y to rest; oil temperature and walls in y are kept.
     *
     * @param y state; the column's part is the starting guess
     * @return rounds needed
     */
    int settle(double[] y) {
        double pseudoStep = Double.POSITIVE_INFINITY;
        startBelowSaturation(y);
        double before = Double.POSITIVE_INFINITY;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            model.solveFlows(y);
            model.columnHeat(y, heat);
            double norm = 0;
            for (double h : heat) {
                norm += Math.abs(h);
            }
            double scale = model.column.flow() * model.column.latentHeat() + 1;
            if (norm <= 1e-9 * scale) {
                return round;
            }
            if (Double.isInfinite(pseudoStep)) {
                if (norm > 0.7 * before && round > NEWTON_ROUNDS) {
                    pseudoStep = FIRST_PSEUDO_STEP_S;
                }
            } else {
                pseudoStep *= norm > before ? 0.3 : 2;
            }
            before = norm;
            assemble(y, pseudoStep);
            solve();
            double largest = apply(y);
            if (largest < 1e-10) {
                return round;
            }
        }
        throw new ComputationException(Message.of(
                MessageKey.COLUMN_NOT_AT_REST,
                Double.toString(y[model.layout.oil] - 273.15),
                Integer.toString(MOST_ROUNDS)));
    }

    /** Cells that would be above saturation at their own pressure are put a little below it. */
    private void startBelowSaturation(double[] y) {
        model.solveFlows(y);
        if (model.column.flow() > 0) {
            for (int j = 0; j < n; j++) {
                y[start + j] = Math.min(y[start + j], model.column.cellSaturationK[j] - 0.5);
            }
        }
    }

    private void assemble(double[] y, double pseudoStep) {
        double film = 0;
        VapourColumn column = model.column;
        for (int j = n - 1; j >= 0; j--) {
            double own = column.cellLiquidEnthalpy(j);
            double c = column.liquidSpecificHeat();
            double slope = column.takeSlope(j);
            double d = slope * (column.vapourEnthalpy() - own)
                    - (column.cellTake[j] + film) * c
                    - model.cellToBodySlope(j, y[start + j])
                    - model.geometry.heatCapacity[j] / pseudoStep;
            above[j] = 0;
            below[j] = 0;
            if (j < n - 1) {
                double axial = model.geometry.axialConductance[j];
                d -= axial;
                above[j] = axial + film * c;
            }
            if (j > 0) {
                double axial = model.geometry.axialConductance[j - 1];
                d -= axial;
                below[j] = axial;
            }
            diagonal[j] = d;
            film += column.cellTake[j];
        }
    }

    /** Thomas' algorithm for the changes that take the heats to zero. */
    private void solve() {
        for (int j = 0; j < n; j++) {
            change[j] = -heat[j];
        }
        for (int j = 1; j < n; j++) {
            double factor = below[j] / diagonal[j - 1];
            diagonal[j] -= factor * above[j - 1];
            change[j] -= factor * change[j - 1];
        }
        change[n - 1] /= diagonal[n - 1];
        for (int j = n - 2; j >= 0; j--) {
            change[j] = (change[j] - above[j] * change[j + 1]) / diagonal[j];
        }
    }

    /** Moves the temperatures, never past saturation in one go. */
    private double apply(double[] y) {
        double largest = 0;
        double low = model.fluid.lowestTemperature() + 1;
        for (int j = 0; j < n; j++) {
            double old = y[start + j];
            double next = old + Math.max(-50, Math.min(50, change[j]));
            double saturation = model.column.cellSaturationK[j];
            if (model.column.flow() > 0) {
                if (old >= saturation) {
                    next = Math.max(next, saturation - 0.5);
                } else if (next >= saturation) {
                    next = saturation - 0.1 * (saturation - old);
                }
            }
            next = Math.max(low, next);
            largest = Math.max(largest, Math.abs(next - old));
            y[start + j] = next;
        }
        return largest;
    }
}
