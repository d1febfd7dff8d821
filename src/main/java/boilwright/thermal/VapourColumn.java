package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.ChokedNozzle;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.Arrays;

/**
 * The quasi-steady vapour between boiler and jets: from oil temperature, wall temperatures of the column and foreline
 * pressure it finds the one boiler flow at which evaporation equals what cells and throats take. The vapour is marched
 * upward with what is left, so nothing takes more than arrives and the front climbs by itself. Working arrays belong to
 * one run; nothing is allocated while solving.
 */
final class VapourColumn {
    private static final double ROOT_TOLERANCE = 1e-12;
    private static final int MOST_TRIALS = 300;
    private static final int HALVING_EVERY = 12;
    /** States of late whose roots are kept: events and records ask again for the ends of a step. */
    private static final int REMEMBERED = 4;

    private static final double BESIDE = 1e-5;
    private static final int BESIDE_TRIALS = 4;

    private final TabulatedFluid fluid;
    private final ColumnGeometry geometry;
    final VapourMarch march;

    // the solution, shared with the march
    final double[] cellTake;
    final double[] cellPa;
    final double[] cellSaturationK;
    final double[] stageFlow;
    final double[] stagePa;
    private final double[] oils = new double[REMEMBERED];
    private final double[] forelines = new double[REMEMBERED];
    private final double[] roots = new double[REMEMBERED];
    private final double[][] temperatures;
    private int oldest;
    private double root;
    /** Slope of what is left of the flow, for the next solution beside the last one; else not a number. */
    private double besideSlope = Double.NaN;

    private double flow;

    VapourColumn(
            Rig rig,
            TabulatedFluid fluid,
            ParameterValues parameters,
            ColumnGeometry geometry,
            double restingForelinePa) {
        this.fluid = fluid;
        this.geometry = geometry;
        march = new VapourMarch(rig, fluid, parameters, geometry, restingForelinePa);
        temperatures = new double[REMEMBERED][geometry.cells];
        cellTake = march.cellTake;
        cellPa = march.cellPa;
        cellSaturationK = march.cellSaturationK;
        stageFlow = march.stageFlow;
        stagePa = march.stagePa;
    }

    /** Flow through throat k per Pa before it, times the root of Rs T; kg/s. */
    double fullFlow(int k, double pressurePa) {
        double saturationK = fluid.saturationTemperature(pressurePa);
        return march.throatFactor[k] * pressurePa / Math.sqrt(fluid.specificGasConstant() * saturationK);
    }

    /** Vapour leaving the boiler, kg/s. */
    double flow() {
        return flow;
    }

    /** Pressure over the oil, Pa. */
    double boilerPa() {
        return march.boilerPa;
    }

    /** Enthalpy of the vapour everywhere in the pump, J/kg. */
    double vapourEnthalpy() {
        return march.vapourEnthalpy;
    }

    /** Heat of vaporisation at the oil's temperature, J/kg. */
    double latentHeat() {
        return march.latent;
    }

    /** Specific heat of the liquid at the oil's temperature, J/(kg K). */
    double liquidSpecificHeat() {
        return march.specificHeat;
    }

    /** Liquid enthalpy at the temperature of cell j, J/kg. */
    double cellLiquidEnthalpy(int j) {
        return march.cellLiquidEnthalpy[j];
    }

    /** Share of the boiling onset reached, 0 to 1: how strongly the pool is stirred by its own vapour. */
    double boilingShare() {
        return march.boilingShare(flow);
    }

    /** Mach number of the vapour entering the column. */
    double footMach() {
        double flux = flow / geometry.flowAreaM2[0];
        return flow <= 0
                ? 0
                : ChokedNozzle.subsonicMach(flux * Math.sqrt(march.rsT) / march.boilerPa, fluid.heatCapacityRatio());
    }

    /**
     * Finds the flow.
     *
     * @param oilK oil temperature, K
     * @param state array that holds the cell temperatures, K
     * @param columnStart index of the lowest cell in it
     * @param forelinePa foreline pressure, Pa
     */
    void solve(double oilK, double[] state, int columnStart, double forelinePa) {
        march.prepare(oilK, state, columnStart, forelinePa);
        if (march.saturationPa <= forelinePa) {
            flow = 0;
            march.still();
            return;
        }
        double known = rootOf(oilK, forelinePa, state, columnStart);
        if (!Double.isNaN(known)) {
            root = known;
            flow = march.march(known);
        } else {
            flow = flowBeside();
            if (Double.isNaN(flow)) {
                flow = findFlow();
                remember(oilK, forelinePa, state, columnStart);
            }
        }
        march.fillAbove();
    }

    /**
     * Tells that the next state to solve lies a hair beside the last one. Its root is then sought from there, and not
     * remembered: what is asked later must not depend on it.
     *
     * @param slope how the flow less what is taken changes with the flow, at the last root; not a number ends it
     */
    void beside(double slope) {
        besideSlope = slope;
    }

    /** What is taken at the root next to the last one, kg/s; not a number when the way there is not that short. */
    private double flowBeside() {
        double m = root;
        for (int round = 0; round < BESIDE_TRIALS && m > 0 && !Double.isNaN(besideSlope); round++) {
            double taken = march.march(m);
            if (Math.abs(m - taken) <= ROOT_TOLERANCE * m) {
                return taken;
            }
            m -= (m - taken) / besideSlope;
        }
        return Double.NaN;
    }

    /** The root for exactly this state when it was solved lately, else NaN: the same bits as if it were sought again. */
    private double rootOf(double oilK, double forelinePa, double[] state, int start) {
        for (int i = 0; i < REMEMBERED; i++) {
            if (oils[i] == oilK
                    && forelines[i] == forelinePa
                    && Arrays.equals(temperatures[i], 0, geometry.cells, state, start, start + geometry.cells)) {
                return roots[i];
            }
        }
        return Double.NaN;
    }

    private void remember(double oilK, double forelinePa, double[] state, int start) {
        oldest = (oldest + 1) % REMEMBERED;
        oils[oldest] = oilK;
        forelines[oldest] = forelinePa;
        roots[oldest] = root;
        System.arraycopy(state, start, temperatures[oldest], 0, geometry.cells);
    }

    /**
     * The root of m - march(m) between no flow and the most that can enter. The first trials depend on the state alone: all
     * that can enter, which is the answer while a front stands in the column, then a point beside it for the slope. After
     * that inverse interpolation, kept inside the bracket. Returns what is taken at the root, so that mass closes to the
     * last digit.
     */
    private double findFlow() {
        double low = 0;
        double high = march.evaporationFactor * march.surfaceFactor * (march.saturationPa - march.forelinePa);
        double m = march.roughFlow(march.mostEntering(high));
        double mBefore = Double.NaN;
        double gBefore = Double.NaN;
        double mTwoBefore = Double.NaN;
        double gTwoBefore = Double.NaN;
        for (int round = 0; round < MOST_TRIALS; round++) {
            double taken = march.march(m);
            double g = m - taken;
            root = m;
            if (Math.abs(g) <= ROOT_TOLERANCE * m) {
                return taken;
            }
            if (g > 0) {
                high = m;
            } else {
                low = m;
            }
            // to the last digit: what is taken can be ten million times as steep as the flow
            if (high - low <= 2 * Math.ulp(high)) {
                return taken;
            }
            double next = round == 0
                    ? m * (g > 0 ? 1 - BESIDE : 1 + BESIDE)
                    : interpolated(m, g, mBefore, gBefore, mTwoBefore, gTwoBefore);
            // now and then a plain halving, so that a kink cannot keep one end of the bracket in place
            if (!(next > low && next < high) || round % HALVING_EVERY == HALVING_EVERY - 1) {
                next = 0.5 * (low + high);
            }
            mTwoBefore = mBefore;
            gTwoBefore = gBefore;
            mBefore = m;
            gBefore = g;
            m = next;
        }
        throw new ComputationException(Message.of(
                MessageKey.ROOT_NOT_REACHED, "vapour flow of the boiler", Double.toString(low), Double.toString(high)));
    }

    /** Zero of the inverse quadratic through three points, or of the secant while there are only two. */
    private static double interpolated(double a, double fa, double b, double fb, double c, double fc) {
        double secant = a - fa * (a - b) / (fa - fb);
        if (Double.isNaN(fc)) {
            return secant;
        }
        double quadratic = a * fb * fc / ((fa - fb) * (fa - fc))
                + b * fa * fc / ((fb - fa) * (fb - fc))
                + c * fa * fb / ((fc - fa) * (fc - fb));
        return Double.isFinite(quadratic) ? quadratic : secant;
    }
}
