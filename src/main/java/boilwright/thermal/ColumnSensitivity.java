package boilwright.thermal;

/**
 * How the solved vapour column answers to the temperature of each cell: takes of cells, flows and pressures of throats, and
 * the flow of the boiler. Each cell is climbed again with one displaced input at a time; the answers are then carried upward,
 * and the boiler's flow follows from its balance.
 */
final class ColumnSensitivity {
    private static final double RELATIVE = 1e-7;
    private static final double DISPLACED_K = 1e-5;

    private final VapourColumn column;
    private final VapourMarch march;
    private final ColumnGeometry geometry;
    private final int cells;
    private final int stages;

    // what the cells answer: rows cell by cell, inputs pressure, taken, wall, flow
    private final double[][] take;
    private final double[][] nextPa;
    private final double[][] nextTaken;
    private final double[][] jet;
    private final double[][] jetPa;

    /** How the flow less what is taken changes with the flow; not a number without vapour. */
    double balanceSlope;
    /** Slope of the boiler's flow in the temperature of cell i, kg/(s K). */
    final double[] flow;
    /** Slope of the take of cell j in the temperature of cell i, [i][j]. */
    final double[][] cellTake;
    /** Slope of the flow through throat k in the temperature of cell i, [i][k]. */
    final double[][] stageFlow;
    /** Slope of the pressure before throat k in the temperature of cell i, Pa/K. */
    final double[][] stagePa;

    // answers to the flow at the foot
    private final double[] takeByFlow;
    private final double[] jetByFlow;
    private final double[] jetPaByFlow;
    private double carriedPa;
    private double carriedTaken;

    ColumnSensitivity(VapourColumn column, ColumnGeometry geometry, int stages) {
        this.column = column;
        march = column.march;
        this.geometry = geometry;
        this.stages = stages;
        cells = geometry.cells;
        take = new double[4][cells];
        nextPa = new double[4][cells];
        nextTaken = new double[4][cells];
        jet = new double[4][stages];
        jetPa = new double[4][stages];
        flow = new double[cells];
        cellTake = new double[cells][cells];
        stageFlow = new double[cells][stages];
        stagePa = new double[cells][stages];
        takeByFlow = new double[cells];
        jetByFlow = new double[stages];
        jetPaByFlow = new double[stages];
    }

    /** Works the slopes out for the state solved last; the column's solution is left as it was. */
    void evaluate(double[] y, int start) {
        int reached = march.reached;
        java.util.Arrays.fill(flow, 0);
        for (int i = 0; i < cells; i++) {
            java.util.Arrays.fill(cellTake[i], 0);
            java.util.Arrays.fill(stageFlow[i], 0);
            java.util.Arrays.fill(stagePa[i], 0);
        }
        balanceSlope = Double.NaN;
        if (column.flow() <= 0) {
            return;
        }
        double m = column.flow();
        double pv = column.boilerPa();
        double dm = RELATIVE * m;
        double pvNext = march.boilerPressure(m + dm);
        march.enter(m + dm, pvNext);
        double footPa = march.nextPa;
        march.enter(m, pv);
        double footSlope = (footPa - march.nextPa) / dm;
        locals(y, start, reached, m, dm, pv, pvNext);
        java.util.Arrays.fill(takeByFlow, 0);
        java.util.Arrays.fill(jetByFlow, 0);
        java.util.Arrays.fill(jetPaByFlow, 0);
        carriedPa = footSlope;
        carriedTaken = 0;
        for (int j = 0; j < reached; j++) {
            carry(j, 1, takeByFlow, jetByFlow, jetPaByFlow);
        }
        settleAbove(reached, jetPaByFlow);
        balanceSlope = 1 - carriedTaken;
        for (int i = 0; i < reached; i++) {
            cellTake[i][i] = take[2][i];
            for (int k = march.firstStage[i]; k < march.firstStage[i + 1]; k++) {
                stageFlow[i][k] = jet[2][k];
                stagePa[i][k] = jetPa[2][k];
            }
            carriedPa = nextPa[2][i];
            carriedTaken = nextTaken[2][i];
            for (int j = i + 1; j < reached; j++) {
                carry(j, 0, cellTake[i], stageFlow[i], stagePa[i]);
            }
            settleAbove(reached, stagePa[i]);
            double dFlow = carriedTaken / balanceSlope;
            flow[i] = dFlow;
            for (int j = 0; j < reached; j++) {
                cellTake[i][j] += takeByFlow[j] * dFlow;
            }
            for (int k = 0; k < stages; k++) {
                stageFlow[i][k] += jetByFlow[k] * dFlow;
                stagePa[i][k] += jetPaByFlow[k] * dFlow;
            }
        }
    }

    private void settleAbove(int reached, double[] pa) {
        for (int k = march.firstStage[reached]; k < stages; k++) {
            pa[k] = carriedPa;
        }
    }

    private void carry(int j, double dm, double[] takes, double[] jets, double[] pressures) {
        double p = carriedPa;
        double s = carriedTaken;
        takes[j] = take[0][j] * p + take[1][j] * s + take[3][j] * dm;
        for (int k = march.firstStage[j]; k < march.firstStage[j + 1]; k++) {
            jets[k] = jet[0][k] * p + jet[1][k] * s + jet[3][k] * dm;
            pressures[k] = jetPa[0][k] * p + jetPa[1][k] * s + jetPa[3][k] * dm;
        }
        carriedPa = nextPa[0][j] * p + nextPa[1][j] * s + nextPa[3][j] * dm;
        carriedTaken = nextTaken[0][j] * p + nextTaken[1][j] * s + nextTaken[3][j] * dm;
    }

    /** Climbs each reached cell with one input displaced at a time, last without. */
    private void locals(double[] y, int start, int reached, double m, double dm, double pv, double pvNext) {
        double specificHeat = column.liquidSpecificHeat();
        double p = march.nextPa;
        double s = 0;
        for (int j = 0; j < reached; j++) {
            double wallK = y[start + j];
            double per = march.perCondensation[j];
            double dp = RELATIVE * p;
            double ds = RELATIVE * m;
            march.climb(j, m, p + dp, s, wallK, per);
            keep(0, j);
            march.climb(j, m, p, s + ds, wallK, per);
            keep(1, j);
            double warmer =
                    geometry.innerAreaM2[j] / (geometry.innerAreaM2[j] / per - march.cellSpecificHeat(j) * DISPLACED_K);
            march.climb(j, m, p, s, wallK + DISPLACED_K, warmer);
            keep(2, j);
            march.enter(m + dm, pvNext);
            march.climb(j, m + dm, p, s, wallK, per);
            keep(3, j);
            march.enter(m, pv);
            march.climb(j, m, p, s, wallK, per);
            slopes(j, dp, ds, dm);
            p = march.nextPa;
            s = march.nextTaken;
        }
    }

    private void keep(int input, int j) {
        take[input][j] = column.cellTake[j];
        nextPa[input][j] = march.nextPa;
        nextTaken[input][j] = march.nextTaken;
        for (int k = march.firstStage[j]; k < march.firstStage[j + 1]; k++) {
            jet[input][k] = column.stageFlow[k];
            jetPa[input][k] = column.stagePa[k];
        }
    }

    private void slopes(int j, double dp, double ds, double dm) {
        for (int input = 0; input < 4; input++) {
            double by = input == 0 ? dp : input == 1 ? ds : input == 2 ? DISPLACED_K : dm;
            take[input][j] = (take[input][j] - column.cellTake[j]) / by;
            nextPa[input][j] = (nextPa[input][j] - march.nextPa) / by;
            nextTaken[input][j] = (nextTaken[input][j] - march.nextTaken) / by;
            for (int k = march.firstStage[j]; k < march.firstStage[j + 1]; k++) {
                jet[input][k] = (jet[input][k] - column.stageFlow[k]) / by;
                jetPa[input][k] = (jetPa[input][k] - column.stagePa[k]) / by;
            }
        }
    }
}
