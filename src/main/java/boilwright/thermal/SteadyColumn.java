package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.DenseLu;
import boilwright.units.PhysicalConstants;

/**
 * Column temperatures at rest for a given oil temperature and given body walls: Newton with the tridiagonal part of the
 * Jacobian, the vapour solved anew each round. Where that does not come down (a front that stands in the column) the same
 * matrix with the cells' heat capacity over a pseudo time step is used, which is an implicit Euler march to rest.
 */
final class SteadyColumn {
    private static final int MOST_ROUNDS = 400;
    private static final double FIRST_PSEUDO_STEP_S = 100;
    /** The lightest cells react in tenths of a second. */
    private static final double SHORTEST_PSEUDO_STEP_S = 0.01;

    private static final double SHORTENING = 10;
    private static final double LENGTHENING = 5;
    /** Heat left over that counts as none, relative to what the vapour carries. */
    private static final double CLOSED = 1e-9;

    private static final int MOST_HALVINGS = 4;
    /** Rounds without the cells' coupling through the pressure. */
    private static final int ELIMINATION_ROUNDS = 40;
    /** Distance from saturation at which a cell may cross it, K. */
    private static final double AT_SATURATION_K = 1e-3;
    /** Difference for the whole Jacobian, K. */
    private static final double DIFFERENCE_K = 1e-4;
    /** Rounds of plain Newton before it may be called too slow. */
    private static final int NEWTON_ROUNDS = 12;

    private final PumpModel model;
    private final int start;
    private final int n;
    private final double[] heat;
    private final Eliminated below = new Eliminated();
    private final double[] fromBelow;
    private final double[] filmStep;
    private final double[] tOmega;
    private final double[] diagonal;
    private final double[] above;
    private final double[] enthalpyGain;
    private final double[] takeSlope;
    private final double[] takeShare;
    private final double[] passedShare;
    private final double[] tFixed;
    private final double[] tAbove;
    private final double[] tSigma;
    private final double[] change;
    private double capSlope;
    private final double[] from;
    private final double[] fromHeat;
    private final double[] fromSaturationK;
    private final boolean[] dry;
    private double[][] whole;
    private double[][] implicit;
    private DenseLu elimination;

    SteadyColumn(PumpModel model) {
        this.model = model;
        start = model.layout.column;
        n = model.geometry.cells;
        heat = new double[n];
        fromBelow = new double[n];
        filmStep = new double[n];
        tOmega = new double[n];
        diagonal = new double[n];
        above = new double[n];
        enthalpyGain = new double[n];
        takeSlope = new double[n];
        takeShare = new double[n];
        passedShare = new double[n];
        tFixed = new double[n];
        tAbove = new double[n];
        tSigma = new double[n];
        change = new double[n];
        from = new double[n];
        fromHeat = new double[n];
        fromSaturationK = new double[n];
        dry = new boolean[n];
    }

    /**
     * Brings the cells of y to rest; oil temperature and walls in y are kept. At rest means that the heats balance: a small
     * step says nothing by itself, since steps are also cut short.
     *
     * @param y state; the column's part is the starting guess
     * @return rounds needed
     */
    int settle(double[] y) {
        startBelowSaturation(y);
        double norm = norm(y);
        for (int round = 1; round <= ELIMINATION_ROUNDS; round++) {
            if (closed(norm)) {
                return round;
            }
            assemble(y);
            solve();
            leave(y);
            norm = step(y, norm, round > NEWTON_ROUNDS ? MOST_HALVINGS : 0);
        }
        return march(y, norm);
    }

    private boolean closed(double norm) {
        return norm <= CLOSED * (model.column.flow() * model.column.latentHeat() + 1);
    }

    /**
     * Implicit march in pseudo time with the whole Jacobian, pressure included. A step counts when less is left over of its
     * own equation than was out of balance before it; else it is taken again, shorter.
     */
    private int march(double[] y, double found) {
        double norm = found;
        double pseudoStep = FIRST_PSEUDO_STEP_S;
        for (int round = 1; round <= MOST_ROUNDS; round++) {
            if (closed(norm)) {
                return ELIMINATION_ROUNDS + round;
            }
            assemble(y);
            leave(y);
            differentiate(y);
            double after = marchStep(y, pseudoStep);
            while (!(leftOver(y, pseudoStep) < norm) && pseudoStep > SHORTEST_PSEUDO_STEP_S) {
                pseudoStep /= SHORTENING;
                after = marchStep(y, pseudoStep);
            }
            pseudoStep *= leftOver(y, pseudoStep) < norm / 2 ? LENGTHENING : 1;
            norm = after;
        }
        throw new ComputationException(Message.of(
                MessageKey.COLUMN_NOT_AT_REST,
                Double.toString(y[model.layout.oil] - PhysicalConstants.ZERO_CELSIUS_K),
                Integer.toString(ELIMINATION_ROUNDS + MOST_ROUNDS)));
    }

    /** Keeps the temperatures, heats and saturation from which a step leaves. */
    private void leave(double[] y) {
        System.arraycopy(y, start, from, 0, n);
        System.arraycopy(heat, 0, fromHeat, 0, n);
        System.arraycopy(model.column.cellSaturationK, 0, fromSaturationK, 0, n);
        markDry();
    }

    /** Slopes of all heats in all temperatures, by differences towards the colder side. */
    private void differentiate(double[] y) {
        if (whole == null) {
            whole = new double[n][n];
            implicit = new double[n][n];
            elimination = new DenseLu(n);
        }
        for (int j = 0; j < n; j++) {
            y[start + j] = from[j] - DIFFERENCE_K;
            model.column.solve(y[model.layout.oil], y, start, model.forelinePa);
            model.columnHeat(y, heat);
            y[start + j] = from[j];
            for (int i = 0; i < n; i++) {
                whole[i][j] = (fromHeat[i] - heat[i]) / DIFFERENCE_K;
            }
        }
        model.modesChanged();
    }

    /** One implicit step from where the column was left; returns what is then out of balance, W. */
    private double marchStep(double[] y, double pseudoStep) {
        for (int i = 0; i < n; i++) {
            System.arraycopy(whole[i], 0, implicit[i], 0, n);
            implicit[i][i] -= model.geometry.heatCapacity[i] / pseudoStep;
            change[i] = -fromHeat[i];
        }
        if (elimination.factor(implicit)) {
            elimination.solve(change);
        } else {
            solve();
        }
        apply(y, 1);
        return norm(y);
    }

    /** What the implicit step's equation leaves over, W. */
    private double leftOver(double[] y, double pseudoStep) {
        double left = 0;
        for (int j = 0; j < n; j++) {
            left += Math.abs(heat[j] - model.geometry.heatCapacity[j] * (y[start + j] - from[j]) / pseudoStep);
        }
        return left;
    }

    /** Goes the whole way, or half and half again as long as that leaves more heat unbalanced than before. */
    private double step(double[] y, double before, int halvings) {
        double share = 1;
        apply(y, share);
        double found = norm(y);
        for (int h = 0; h < halvings && !(found < before); h++) {
            share /= 2;
            apply(y, share);
            found = norm(y);
        }
        return found;
    }

    /** Solves the flows of y and the heats of its cells; returns the sum of their sizes, W. */
    private double norm(double[] y) {
        model.solveFlows(y);
        model.columnHeat(y, heat);
        double norm = 0;
        for (double h : heat) {
            norm += Math.abs(h);
        }
        return norm;
    }

    /** A cell that would still gain heat without condensing anything is hotter than saturation at rest. */
    private void markDry() {
        for (int j = 0; j < n; j++) {
            dry[j] = heat[j] - model.column.cellTake[j] * enthalpyGain[j] > 0;
        }
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

    private void assemble(double[] y) {
        double film = 0;
        VapourColumn column = model.column;
        for (int j = n - 1; j >= 0; j--) {
            double gain = column.vapourEnthalpy() - column.cellLiquidEnthalpy(j);
            double c = column.liquidSpecificHeat();
            double slope = column.march.takeSlope(model.geometry.innerAreaM2[j], j);
            double d = slope * gain - (column.cellTake[j] + film) * c - model.cellToBodySlope(j, y[start + j]);
            above[j] = 0;
            fromBelow[j] = 0;
            filmStep[j] = 0;
            if (j < n - 1) {
                double axial = model.geometry.axialConductance[j];
                d -= axial;
                above[j] = axial + film * c;
                filmStep[j] = column.cellLiquidEnthalpy(j + 1) - column.cellLiquidEnthalpy(j);
            }
            if (j > 0) {
                double axial = model.geometry.axialConductance[j - 1];
                d -= axial;
                fromBelow[j] = axial;
            }
            diagonal[j] = d;
            enthalpyGain[j] = gain;
            takeSlope[j] = slope;
            takeShare[j] = column.march.takeShare(j);
            passedShare[j] = column.march.passedShare(j);
            film += column.cellTake[j];
        }
        capSlope = column.march.capSlope(column.flow());
    }

    /**
     * The changes that take the heats to zero. What cell j takes changes with its own temperature and with what was taken
     * below it (tau, the running sum of all changes, sigma at the top); the film it receives changes with what cells above
     * take (c, the running sum over cells alone, omega at the top). Sigma acts back through what can enter the column.
     * Upward elimination, with T, tau and c of the cell below linear in this cell's temperature, sigma and omega.
     */
    private void solve() {
        double k = capSlope;
        below.clear();
        for (int j = 0; j < n; j++) {
            double a = takeShare[j];
            double q = filmStep[j];
            double gained = (enthalpyGain[j] - q) * a;
            double f = fromBelow[j];
            double d = diagonal[j] - q * takeSlope[j] + f * below.tA - gained * below.uA - q * below.cA;
            double tB = (-heat[j] - f * below.tB + gained * below.uB + q * below.cB) / d;
            double tA = -above[j] / d;
            double tS = (-f * below.tS + gained * (below.uS - k) + q * below.cS) / d;
            double tW = (-f * below.tW + gained * below.uW + q * (below.cW - 1)) / d;
            tFixed[j] = tB;
            tAbove[j] = tA;
            tSigma[j] = tS;
            tOmega[j] = tW;
            below.pass(a, takeSlope[j], k, passedShare[j]);
            below.substitute(tB, tA, tS, tW);
        }
        // sigma = uB + uS sigma + uW omega and omega = cB + cS sigma + cW omega
        double determinant = (1 - below.uS) * (1 - below.cW) - below.uW * below.cS;
        double sigma = (below.uB * (1 - below.cW) + below.uW * below.cB) / determinant;
        double omega = ((1 - below.uS) * below.cB + below.cS * below.uB) / determinant;
        change[n - 1] = tFixed[n - 1] + tSigma[n - 1] * sigma + tOmega[n - 1] * omega;
        for (int j = n - 2; j >= 0; j--) {
            change[j] = tFixed[j] + tAbove[j] * change[j + 1] + tSigma[j] * sigma + tOmega[j] * omega;
        }
    }

    /** What has been eliminated: temperature, tau and c below as fixed part and multiples of T, sigma and omega. */
    private static final class Eliminated {
        private double tB;
        private double tA;
        private double tS;
        private double tW;
        private double uB;
        private double uA;
        private double uS;
        private double uW;
        private double cB;
        private double cA;
        private double cS;
        private double cW;

        void clear() {
            tB = tA = tS = tW = 0;
            uB = uA = uS = uW = 0;
            cB = cA = cS = cW = 0;
        }

        /** Adds what a cell and the throats at its top take: share a of what arrives, slope with its own temperature. */
        void pass(double a, double slope, double k, double passed) {
            cB -= a * uB;
            cA += slope - a * uA;
            cS += a * (k - uS);
            cW -= a * uW;
            uB = passed * (1 - a) * uB;
            uA = passed * ((1 - a) * uA + slope);
            uS = passed * ((1 - a) * uS + a * k) + (1 - passed) * k;
            uW = passed * (1 - a) * uW;
        }

        /** Replaces the temperature of the cell just passed by that of the one above. */
        void substitute(double fixed, double perAbove, double perSigma, double perOmega) {
            tB = fixed;
            tA = perAbove;
            tS = perSigma;
            tW = perOmega;
            uB += uA * fixed;
            uS += uA * perSigma;
            uW += uA * perOmega;
            uA *= perAbove;
            cB += cA * fixed;
            cS += cA * perSigma;
            cW += cA * perOmega;
            cA *= perAbove;
        }
    }

    /** Moves the temperatures by a share of the change, never past saturation in one go unless the cell is to be dry. */
    private void apply(double[] y, double share) {
        double low = model.fluid.lowestTemperature() + 1;
        // a cell is no hotter than oil, room and the hottest wall: its neighbour may face another wall than it does
        double high = Math.max(y[model.layout.oil], model.roomK) + 1;
        for (int w = model.layout.walls; w < model.layout.water; w++) {
            high = Math.max(high, y[w] + 1);
        }
        for (int j = 0; j < n; j++) {
            double old = from[j];
            double next = old + share * Math.max(-50, Math.min(50, change[j]));
            double saturation = fromSaturationK[j];
            if (saturation > 0 && !dry[j]) {
                if (old >= saturation) {
                    next = Math.max(next, saturation - 0.5);
                } else if (next >= saturation) {
                    next = saturation - old < AT_SATURATION_K
                            ? Math.min(next, saturation + 0.5)
                            : saturation - 0.1 * (saturation - old);
                }
            }
            next = Math.max(low, Math.min(high, next));
            y[start + j] = next;
        }
    }
}
