package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.TabulatedFluid;
import boilwright.numerics.Roots;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.units.PhysicalConstants;
import java.util.Arrays;

/**
 * The rig at rest. For a given oil temperature column, walls and water are settled; the steady state is the one monotone
 * root in the oil temperature at which the source delivers what the pump takes, the needed state the one at which the
 * weakest jet just carries its full flow. Jet modes are those reached from cold.
 */
public final class SteadySolver {
    /** Largest energy balance left over at rest, relative to the heat delivered. */
    public static final double CLOSURE_LIMIT = 1e-4;

    /** Couplings after which walls go half the way only. */
    private static final int DAMPED_FROM = 30;

    private static final int MOST_COUPLINGS = 200;
    private static final double COUPLED_K = 1e-8;
    private static final double ROOT_TOLERANCE = 1e-11;
    /** Share of the heat that may be out of balance when all is solved at once. */
    private static final double BALANCED = 1e-8;

    /** What a source delivers is below this multiple of its rating, mains tolerance included. */
    private static final double MOST_OF_RATING = 1.3;

    private final PumpModel model;
    private final SteadyColumn column;
    private final SteadyWalls walls;
    private final SteadyNewton newton;
    private final boolean triesAllAtOnce;
    private final double[] y;
    private final double[] cold;
    private final double[] wallsBefore;
    /** True once a solution for other jet modes is at hand. */
    private boolean near;

    private double wallK;
    private double faceK;
    private double faceHeatW;

    /**
     * Sets a rig up.
     *
     * @param rig the rig
     * @param fluid its fluid
     * @param parameters values of the uncertain defaults
     */
    public SteadySolver(Rig rig, TabulatedFluid fluid, ParameterValues parameters) {
        this(new PumpModel(rig, fluid, parameters, ColumnGeometry.USUAL_CELLS));
    }

    SteadySolver(PumpModel model) {
        this(model, true);
    }

    /** Without all at once, the parts are settled one inside the other from the start; for comparison. */
    SteadySolver(PumpModel model, boolean triesAllAtOnce) {
        this.model = model;
        this.triesAllAtOnce = triesAllAtOnce;
        column = new SteadyColumn(model);
        walls = new SteadyWalls(model);
        newton = new SteadyNewton(model);
        cold = model.coldState();
        wallsBefore = new double[model.layout.wallCount];
        y = cold.clone();
    }

    /** The state vector of the last solution. */
    double[] state() {
        return y.clone();
    }

    /** The rig at rest at the last level of its schedule. */
    public SteadyState steady() {
        setLastLevel();
        solveSteady();
        return SteadyReport.of(model, y, faceHeatW, faceK);
    }

    /** The state in which the weakest jet just has its full flow, and what the source could deliver there. */
    public NeededState needed() {
        setLastLevel();
        settleModes(this::rootForFullFlow);
        double needed = faceHeatW;
        double available = model.source.steadyDeliveredW(faceK, y[model.layout.oil]);
        int governing = weakest();
        SteadyState state = SteadyReport.of(model, y, needed, faceK);
        return new NeededState(state, model.rig.stages().get(governing).name(), needed, available);
    }

    private void setLastLevel() {
        var steps = model.rig.schedule().steps();
        model.source.setStep(steps.get(steps.size() - 1));
        model.source.setFuelEmpty(false);
    }

    void solveSteady() {
        settleModes(this::rootForBalance);
        model.source.steadyDeliveredW(faceK, y[model.layout.oil]);
        y[model.layout.boilerWall] = wallK;
        model.source.steadyStates(y, model.layout.source, model.roomK);
        y[model.layout.gas] = 0;
    }

    /** Modes from cold: all dark, then tested from the bottom after each solution until they stay. */
    private void settleModes(Runnable solution) {
        model.jets.allDark();
        System.arraycopy(cold, 0, y, 0, y.length);
        for (int round = 0; round < JetModes.mostRounds(); round++) {
            model.modesChanged();
            near = round > 0;
            solution.run();
            boolean changed = false;
            for (int k = 0; k < model.jets.stages; k++) {
                if (model.jets.litExcess(k, model.column, model.walls) >= 0) {
                    model.jets.toggleLit(k);
                    changed = true;
                }
                if (model.jets.fullExcess(k) >= 0) {
                    model.jets.toggleFull(k);
                    changed = true;
                }
            }
            if (!changed) {
                return;
            }
        }
        throw new ComputationException(
                Message.of(MessageKey.JET_MODES_NOT_SETTLED, Integer.toString(JetModes.mostRounds())));
    }

    private void rootForBalance() {
        if (allAtOnce(-1)) {
            return;
        }
        double low = Math.min(model.roomK, model.rig.cooling().inletTemperatureK()) - 1;
        double oil =
                Roots.bracketed(this::heatExcess, low, highestOilK(), ROOT_TOLERANCE, 0, "oil temperature at rest");
        heatExcess(oil);
    }

    private void rootForFullFlow() {
        int throat = near ? weakest() : 0;
        for (int tries = 0; tries < model.jets.stages && allAtOnce(throat); tries++) {
            near = true;
            if (weakest() == throat) {
                return;
            }
            throat = weakest();
        }
        double low = Math.max(
                model.fluid.lowestTemperature() + 1, model.fluid.saturationTemperature(model.jets.requiredPa) - 1);
        double high = low;
        for (double factor = 1.5; flowExcess(high) < 0 && high < highestOilK(); factor *= 2) {
            low = high;
            high = Math.min(highestOilK(), model.fluid.saturationTemperature(factor * model.jets.requiredPa));
        }
        double oil = Roots.bracketed(this::flowExcess, low, high, ROOT_TOLERANCE, 0, "oil temperature for full jets");
        flowExcess(oil);
    }

    /**
     * Everything in one set of equations, from a fixed start or from the solution for other jet modes. The answer counts
     * when it is in range and balances; else the parts are settled one inside the other.
     *
     * @param throat the throat that shall carry its full flow, or -1 for what the source delivers
     */
    private boolean allAtOnce(int throat) {
        if (!triesAllAtOnce) {
            return false;
        }
        boolean solved = near && solve(throat, SteadyNewton.Way.NEAR);
        if (!solved) {
            System.arraycopy(cold, 0, y, 0, y.length);
            solved = solveFromStart(throat);
        }
        if (solved && !model.water.flowsEverywhere() && dryStandingWater()) {
            solved = solve(throat, SteadyNewton.Way.HASTY) || solveFromStart(throat);
        }
        if (!solved || !(y[model.layout.oil] < highestOilK())) {
            return false;
        }
        faceHeat();
        double excess = model.source.steadyDeliveredW(faceK, y[model.layout.oil]) - faceHeatW;
        return throat >= 0 || Math.abs(excess) <= BALANCED * Math.max(1, Math.abs(faceHeatW));
    }

    /** In haste, then with care; levels of standing water stay as they are. */
    private boolean solveFromStart(int throat) {
        newton.start(y);
        if (solve(throat, SteadyNewton.Way.HASTY)) {
            return true;
        }
        newton.start(y);
        return solve(throat, SteadyNewton.Way.CAREFUL);
    }

    private boolean solve(int throat, SteadyNewton.Way way) {
        model.modesChanged();
        return throat < 0 ? newton.rest(y, way) : newton.fullFlow(y, throat, way);
    }

    private double highestOilK() {
        return RunLimits.wildOilK(model.fluid);
    }

    private double heatExcess(double oilK) {
        startAt(oilK);
        column.settle(y);
        double rated = model.rig.heatSource().ratedPowerW() * MOST_OF_RATING;
        double taken = model.column.flow() * model.column.latentHeat();
        if (taken > rated) {
            // far beyond what any setting of the source gives: the sign is certain, the walls need not be settled
            return rated - taken;
        }
        settleFrom();
        return model.source.steadyDeliveredW(faceK, oilK) - faceHeatW;
    }

    private double flowExcess(double oilK) {
        settleAt(oilK);
        return model.jets.fraction[weakest()] - 1;
    }

    private int weakest() {
        int weakest = 0;
        for (int k = 1; k < model.jets.stages; k++) {
            if (model.jets.fraction[k] < model.jets.fraction[weakest]) {
                weakest = k;
            }
        }
        return weakest;
    }

    /** Settles column, walls and water for this oil temperature and finds the heat that the boiler's face must pass. */
    private void settleAt(double oilK) {
        startAt(oilK);
        settleFrom();
    }

    /** Starts from the same state each time: the answer must not depend on the path of the search. */
    private void startAt(double oilK) {
        System.arraycopy(cold, 0, y, 0, y.length);
        model.modesChanged();
        y[model.layout.oil] = oilK;
        y[model.layout.boilerWall] = oilK;
        double saturation = Math.max(model.roomK, oilK - 1);
        Arrays.fill(y, model.layout.column, model.layout.column + model.layout.cells, saturation);
    }

    private void settleFrom() {
        settle();
        if (!model.water.flowsEverywhere() && dryStandingWater()) {
            settle();
        }
        faceHeat();
    }

    /** Walls and water half the way back, for couplings that would swing for ever. */
    private void halfway() {
        for (int w = 0; w < wallsBefore.length; w++) {
            int at = model.layout.walls + w;
            y[at] = 0.5 * (y[at] + wallsBefore[w]);
        }
    }

    private void settle() {
        for (int i = 0; i < MOST_COUPLINGS; i++) {
            column.settle(y);
            System.arraycopy(y, model.layout.walls, wallsBefore, 0, wallsBefore.length);
            double before = y[model.layout.boilerWall];
            boilerWall();
            double moved = Math.abs(y[model.layout.boilerWall] - before);
            if (Math.max(moved, walls.settle(y)) < COUPLED_K) {
                model.modesChanged();
                model.solveFlows(y);
                return;
            }
            if (i > DAMPED_FROM) {
                halfway();
            }
            model.modesChanged();
        }
        throw new ComputationException(Message.of(
                MessageKey.COLUMN_NOT_AT_REST,
                Double.toString(y[model.layout.oil] - PhysicalConstants.ZERO_CELSIUS_K),
                Integer.toString(MOST_COUPLINGS)));
    }

    /** Standing water that boils is gone once the rig is at rest. */
    private boolean dryStandingWater() {
        boolean dried = false;
        for (int i = 0; i < model.water.count; i++) {
            if (!model.water.flows(i) && model.water.boilingW(y[model.layout.water + i]) > 0) {
                y[model.layout.fill + i] = 0;
                dried = true;
            }
        }
        return dried;
    }

    /** Boiler wall at which the vapour's heat passes into the oil; one that no source heats is settled with the walls. */
    private void boilerWall() {
        if (!model.source.heatsLiquid()) {
            y[model.layout.boilerWall] = model.boiler.wallForHeat(intoOil(), y[model.layout.oil]);
        }
    }

    private double intoOil() {
        return model.column.flow() * model.column.latentHeat() + model.returnHeatW();
    }

    private double outsideLoss(double t) {
        return model.boiler.outsideLossW(t, model.source.flameOn(), model.source.coversHeatedArea());
    }

    private void faceHeat() {
        boilerWall();
        wallK = y[model.layout.boilerWall];
        double lost = outsideLoss(wallK) + model.boilerToBodyW(y);
        faceHeatW = intoOil() + lost;
        faceK = wallK + (model.source.heatsLiquid() ? 0 : faceHeatW * model.boiler.halfResistance());
    }
}
