package boilwright.thermal;

import boilwright.thermal.StateLayout.Quadrature;
import java.util.Arrays;

/**
 * Partial derivatives of the whole model. The cells, of which there are many and each of which moves all vapour above it,
 * are done from the column's own sensitivities; the few other states by one-sided differences, which leave the vapour as it
 * is unless the oil is displaced. Working arrays belong to one run.
 */
final class ModelJacobian {
    private static final double RELATIVE = 1e-7;

    private final PumpModel model;
    private final StateLayout at;
    private final ColumnSensitivity sensitivity;
    private final double[] displaced;
    private final double[] rates;
    private final double[] specificHeat;
    private final double[] heatBefore;
    private final double[] flowBefore;
    private double demandBefore;
    /** What each wall's heat, the returning oil's heat and the lost oil answer to flow and pressure of each throat. */
    private final double[][] heatByFlow;

    private final double[][] heatByPa;
    private final double[] returnByFlow;
    private final double[] returnByPa;
    private final double[] lossByFlow;
    private final double[] lossByPa;

    /** Slope of the heat that evaporation and return take from the pool in each state, W per unit. */
    final double[] demand;
    /** Slope of each throat's flow in each state, [throat][state], kg/s per unit. */
    final double[][] throatFlow;

    ModelJacobian(PumpModel model) {
        this.model = model;
        at = model.layout;
        int throats = model.jets.stages;
        int walls = at.wallCount;
        sensitivity = new ColumnSensitivity(model.column, model.geometry, throats);
        displaced = new double[at.size];
        rates = new double[at.size];
        specificHeat = new double[at.cells];
        heatBefore = new double[walls];
        flowBefore = new double[throats];
        heatByFlow = new double[throats][walls];
        heatByPa = new double[throats][walls];
        returnByFlow = new double[throats];
        returnByPa = new double[throats];
        lossByFlow = new double[throats];
        lossByPa = new double[throats];
        demand = new double[at.size];
        throatFlow = new double[throats][at.size];
    }

    /**
     * Fills the matrix.
     *
     * @param y state
     * @param dydt derivative there
     * @param jacobian receives d(dydt_i)/dy_j, [i][j]
     */
    void evaluate(double[] y, double[] dydt, double[][] jacobian) {
        for (int i = 0; i < at.size; i++) {
            Arrays.fill(jacobian[i], 0);
        }
        Arrays.fill(demand, 0);
        for (double[] row : throatFlow) {
            Arrays.fill(row, 0);
        }
        model.solveFlows(y);
        sensitivity.evaluate(y, at.column);
        wallAnswers(y);
        for (int i = 0; i < at.cells; i++) {
            specificHeat[i] = model.column.march.cellSpecificHeat(i);
        }
        for (int i = 0; i < at.cells; i++) {
            cell(i, y, jacobian);
        }
        demandBefore = model.oilDemandW();
        System.arraycopy(model.column.stageFlow, 0, flowBefore, 0, flowBefore.length);
        System.arraycopy(y, 0, displaced, 0, y.length);
        jacobian[at.oil][at.oilMass] = -dydt[at.oil] / y[at.oilMass];
        jacobian[at.gas][at.gas] = model.gas.byContent(y[at.gas], model.column.boilingShare(), model.forelinePa(y));
        // running water keeps every node full
        boolean full = model.water.flowsEverywhere();
        difference(at.boilerWall, dydt, jacobian);
        for (int i = at.source; i < at.quadratures; i++) {
            i = i == at.column ? at.walls : i;
            i = i == at.fill && full ? at.supply : i;
            if (i >= at.quadratures) {
                break;
            }
            difference(i, dydt, jacobian);
        }
        // the oil, which moves the vapour, comes last
        model.column.beside(sensitivity.balanceSlope);
        try {
            difference(at.oil, dydt, jacobian);
        } finally {
            model.column.beside(Double.NaN);
        }
    }

    /** Column i of the matrix for a cell: what its temperature does to cells, body, pool and foreline. */
    private void cell(int i, double[] y, double[][] jacobian) {
        VapourColumn column = model.column;
        ColumnGeometry geometry = model.geometry;
        int state = at.column + i;
        double[] take = sensitivity.cellTake[i];
        double film = 0;
        double filmSlope = 0;
        for (int j = at.cells - 1; j >= 0; j--) {
            double own = column.cellLiquidEnthalpy(j);
            double slope = take[j] * (column.vapourEnthalpy() - own);
            if (j < at.cells - 1) {
                slope += filmSlope * (column.cellLiquidEnthalpy(j + 1) - own);
            }
            if (j == i) {
                slope -= (column.cellTake[j] + film) * specificHeat[j] + model.cellToBodySlope(j, y[state]);
                slope -= j < at.cells - 1 ? geometry.axialConductance[j] : 0;
                slope -= j > 0 ? geometry.axialConductance[j - 1] : 0;
            } else if (j == i - 1) {
                slope += film * specificHeat[i] + geometry.axialConductance[j];
            } else if (j == i + 1) {
                slope += geometry.axialConductance[i];
            }
            jacobian[at.column + j][state] = slope / geometry.heatCapacity[j];
            film += column.cellTake[j];
            filmSlope += take[j];
        }
        double returned = filmSlope * (model.walls.oilEnthalpy() - column.cellLiquidEnthalpy(0));
        if (i == 0) {
            returned -= film * specificHeat[0];
        }
        double loss = 0;
        jacobian[at.walls + model.facing(i)][state] +=
                model.cellToBodySlope(i, y[state]) / wallCapacity(model.facing(i));
        for (int k = 0; k < throatFlow.length; k++) {
            double flow = sensitivity.stageFlow[i][k];
            double pressure = sensitivity.stagePa[i][k];
            throatFlow[k][state] = flow;
            returned += returnByFlow[k] * flow + returnByPa[k] * pressure;
            loss += lossByFlow[k] * flow + lossByPa[k] * pressure;
            for (int w = 0; w < at.wallCount; w++) {
                jacobian[at.walls + w][state] +=
                        (heatByFlow[k][w] * flow + heatByPa[k][w] * pressure) / wallCapacity(w);
            }
        }
        double flow = sensitivity.flow[i];
        demand[state] = flow * column.latentHeat() + returned;
        jacobian[at.oil][state] = -demand[state] / (y[at.oilMass] * column.liquidSpecificHeat());
        jacobian[at.oilMass][state] = -loss;
        jacobian[at.gas][state] = model.gas.byBoiling(y[at.gas], column.boilingShare(), model.forelinePa(y))
                * column.march.boilingShareSlope(column.flow())
                * flow;
        jacobian[at.quadrature(Quadrature.FORELINE)][state] = loss * column.vapourEnthalpy();
    }

    private double wallCapacity(int w) {
        return model.wallGeometry.heatCapacity[w];
    }

    /** Displaces flow and pressure of each throat and watches the walls. */
    private void wallAnswers(double[] y) {
        System.arraycopy(model.walls.heatW, 0, heatBefore, 0, heatBefore.length);
        double returned = model.returnHeatW();
        double loss = model.walls.lossKgPerS();
        double scale = RELATIVE * model.column.flow();
        for (int k = 0; k < throatFlow.length; k++) {
            answer(y, model.column.stageFlow, k, scale, heatByFlow[k]);
            returnByFlow[k] = scale > 0 ? (model.returnHeatW() - returned) / scale : 0;
            lossByFlow[k] = scale > 0 ? (model.walls.lossKgPerS() - loss) / scale : 0;
            double dp = scale > 0 ? RELATIVE * model.column.stagePa[k] : 0;
            answer(y, model.column.stagePa, k, dp, heatByPa[k]);
            returnByPa[k] = dp > 0 ? (model.returnHeatW() - returned) / dp : 0;
            lossByPa[k] = dp > 0 ? (model.walls.lossKgPerS() - loss) / dp : 0;
        }
        model.solveWalls(y);
    }

    private void answer(double[] y, double[] input, int k, double by, double[] heat) {
        Arrays.fill(heat, 0);
        if (by > 0) {
            double held = input[k];
            input[k] = held + by;
            model.solveWalls(y);
            for (int w = 0; w < heat.length; w++) {
                heat[w] = (model.walls.heatW[w] - heatBefore[w]) / by;
            }
            input[k] = held;
        }
    }

    private void difference(int i, double[] dydt, double[][] jacobian) {
        double held = displaced[i];
        double wanted = RELATIVE * Math.max(Math.abs(held), 1);
        // towards room temperature: such states always exist
        displaced[i] = held > model.roomK ? held - wanted : held + wanted;
        double made = displaced[i] - held;
        model.derivative(0, displaced, rates);
        for (int r = 0; r < at.size; r++) {
            jacobian[r][i] = (rates[r] - dydt[r]) / made;
        }
        if (i == at.oil || (i >= at.walls && i < at.water)) {
            demand[i] = (model.oilDemandW() - demandBefore) / made;
            for (int k = 0; k < throatFlow.length; k++) {
                throatFlow[k][i] = (model.column.stageFlow[k] - flowBefore[k]) / made;
            }
        }
        displaced[i] = held;
    }
}
