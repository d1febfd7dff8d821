package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.heattransfer.NusseltFilm;
import boilwright.numerics.Roots;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.function.DoubleUnaryOperator;

/**
 * What the jets' vapour does on the walls: on each zone a falling film whose surface temperature decides which share
 * condenses; the rest goes to the zone below and from the lowest into the foreline. Solved downward by one bracketed root
 * per zone in the temperature difference across the film. Working arrays belong to one run.
 */
final class CondensingWalls {
    private static final double ROOT_TOLERANCE = 1e-11;
    private static final double BALANCE_TOLERANCE = 1e-12;
    private static final int QUICK_ROUNDS = 8;

    private final TabulatedFluid fluid;
    private final WallGeometry walls;
    /** Saturation pressure at the lower end of the fluid's table, Pa: below it nothing condenses on a wall in the table. */
    private final double lowestPa;

    private final double wallPressureShare;
    private final double spill;
    private final double reheat;
    private final DoubleUnaryOperator filmBalance = this::filmBalance;

    // the zone under way
    private double oilK;
    private double oilEnthalpy;
    private double vapourEnthalpy;
    private double latent;
    private double specificHeat;
    private double wallK;
    private double vapourIn;
    private double wallPa;
    private double saturationK;
    private double areaM2;
    private double lengthM;
    private double halfResistance;
    private double filmHeatW;
    private double share;
    private double returnEnthalpy;
    private double surfaceK;

    // the solution, per wall (zones and cap)
    final double[] heatW;
    final double[] condensed;
    final double[] condensedShare;
    final double[] returnLiquidEnthalpy;
    final double[] filmSurfaceK;
    final double[] filmMarginK;
    private double lossKgPerS;

    CondensingWalls(Rig rig, TabulatedFluid fluid, ParameterValues parameters, WallGeometry walls) {
        this.fluid = fluid;
        this.walls = walls;
        lowestPa = fluid.vapourPressure(fluid.lowestTemperature()) * (1 + 1e-9);
        wallPressureShare = parameters.get(Parameter.WALL_PRESSURE_SHARE);
        spill = walls.cap >= 0 ? parameters.get(Parameter.CAP_SPILL_FRACTION) : 0;
        reheat = reheatShare(rig, parameters);
        heatW = new double[walls.count];
        condensed = new double[walls.count];
        condensedShare = new double[walls.count];
        returnLiquidEnthalpy = new double[walls.count];
        filmSurfaceK = new double[walls.count];
        filmMarginK = new double[walls.count];
    }

    /**
     * Share of the way back to oil temperature that the condensate is reheated on the uncooled lower wall: 0.1 without
     * one, rising to 0.4 at 100 mm (engineering judgement), times the registry's factor.
     */
    private static double reheatShare(Rig rig, ParameterValues parameters) {
        double share = 0.1 + 0.3 * Math.min(1, rig.body().uncooledLowerHeightM() / 0.1);
        return share * parameters.get(Parameter.CONDENSATE_REHEAT_FACTOR);
    }

    /** Oil vapour that leaves into the foreline, kg/s. */
    double lossKgPerS() {
        return lossKgPerS;
    }

    /**
     * Pressure of vapour on the wall of stage k.
     *
     * @param outletPa pressure the stage works against, Pa
     * @param stagePa static pressure before its throat, Pa
     */
    double wallPressure(double outletPa, double stagePa) {
        return Math.max(outletPa, wallPressureShare * stagePa);
    }

    /**
     * Solves all zones from the top down.
     *
     * @param column solved vapour column
     * @param oilK oil temperature, K
     * @param outletPa pressure each stage works against, Pa
     * @param state array that holds the wall temperatures
     * @param wallStart index of zone 0 in it
     */
    void solve(VapourColumn column, double oilK, double[] outletPa, double[] state, int wallStart) {
        begin(column, oilK);
        int top = walls.zones - 1;
        double passing = 0;
        if (walls.cap >= 0) {
            double onCap = spill * column.stageFlow[top];
            solveWall(walls.cap, onCap, wallPressureShare * column.stagePa[top], state[wallStart + walls.cap], false);
            passing = onCap - condensed[walls.cap];
        }
        for (int k = top; k >= 0; k--) {
            double flow = column.stageFlow[k] * (k == top ? 1 - spill : 1) + passing;
            solveWall(k, flow, wallPressure(outletPa[k], column.stagePa[k]), state[wallStart + k], true);
            passing = flow - condensed[k];
        }
        lossKgPerS = passing;
    }

    /** Share of the top jet that the cap catches. */
    double spillShare() {
        return spill;
    }

    /** Prepares single-zone solutions at one state of the column. */
    void begin(VapourColumn column, double oilK) {
        this.oilK = oilK;
        oilEnthalpy = fluid.liquidEnthalpy(oilK);
        vapourEnthalpy = column.vapourEnthalpy();
        latent = column.latentHeat();
        specificHeat = column.liquidSpecificHeat();
    }

    /** Solves one wall that receives this much vapour at this pressure; results in the arrays at its index. */
    void solveWall(int w, double vapour, double pressurePa, double temperatureK, boolean film) {
        vapourIn = vapour;
        wallPa = pressurePa;
        wallK = temperatureK;
        areaM2 = walls.innerAreaM2[w];
        lengthM = walls.heightM[w];
        halfResistance = walls.halfResistance[w];
        saturationK = lowestPa > pressurePa ? fluid.lowestTemperature() : fluid.saturationTemperature(pressurePa);
        double room = saturationK - wallK;
        if (room <= 0 || vapour <= 0) {
            atFilm(0);
            filmHeatW = 0;
        } else if (film) {
            solveFilm(room);
        } else {
            atFilm(0);
        }
        condensedShare[w] = share;
        condensed[w] = share * vapourIn;
        returnLiquidEnthalpy[w] = returnEnthalpy;
        // heat from what condenses, so that the balance closes whatever the film's root was
        heatW[w] = condensed[w] * (vapourEnthalpy - returnEnthalpy);
        filmSurfaceK[w] = surfaceK;
        filmMarginK[w] = saturationK - surfaceK;
    }

    /**
     * Leaves the film at the root of {@link #filmBalance} in (0, room). What a film passes goes with the power of 3/4 of its
     * temperature difference and what condenses hardly changes, so scaling by the power of 4/3 comes near at once and
     * secants end it; where vapour is left over and that is not so, the bracketed search takes its place.
     */
    private void solveFilm(double room) {
        double before = Math.min(1, room / 2);
        double balanceBefore = filmBalance(before);
        double x = scaled(before, balanceBefore);
        for (int round = 0; round < QUICK_ROUNDS && x > 0 && x < room; round++) {
            double balance = filmBalance(x);
            if (Math.abs(balance) <= BALANCE_TOLERANCE * filmHeatW) {
                return;
            }
            double next = round == 0 ? scaled(x, balance) : x - balance * (x - before) / (balance - balanceBefore);
            before = x;
            balanceBefore = balance;
            x = next;
        }
        atFilm(Roots.bracketed(filmBalance, 0, room, ROOT_TOLERANCE, 0, "film on a body wall"));
    }

    private double scaled(double x, double balance) {
        double ratio = 1 - balance / filmHeatW;
        return x * ratio * Math.cbrt(ratio);
    }

    private double filmBalance(double x) {
        atFilm(x);
        return filmHeatW - share * vapourIn * (vapourEnthalpy - returnEnthalpy);
    }

    /** Film of temperature difference x: its heat, the share that condenses on its surface, what returns. */
    private void atFilm(double x) {
        double faceK = wallK;
        filmHeatW = 0;
        if (x > 0) {
            double filmK = wallK + x / 2;
            double h = NusseltFilm.meanCoefficient(
                    fluid.filmGroup(filmK), latent + specificHeat * (oilK - filmK), lengthM, x);
            filmHeatW = h * areaM2 * x;
            faceK = wallK + filmHeatW * halfResistance;
        }
        surfaceK = faceK + x;
        share = surfaceK >= saturationK ? 0 : 1 - fluid.vapourPressure(surfaceK) / wallPa;
        if (share > 0) {
            double meanK = faceK + x / 2;
            returnEnthalpy = fluid.liquidEnthalpy(meanK + reheat * (oilK - meanK));
        } else {
            // nothing condenses, so where it would return does not matter
            returnEnthalpy = oilEnthalpy;
        }
    }

    /** Liquid enthalpy at the oil's temperature, J/kg. */
    double oilEnthalpy() {
        return oilEnthalpy;
    }
}
