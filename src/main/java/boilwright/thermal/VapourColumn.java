package boilwright.thermal;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.ChokedNozzle;
import boilwright.heattransfer.NusseltFilm;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;

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
    /** Where 64/Re and 0.316 Re^-1/4 are equal. */
    private static final double EQUAL_FRICTION_REYNOLDS = Math.pow(64 / 0.316, 4.0 / 3);
    /** Latent heat flux at which the boiling surface has grown most of the way, W/m2; engineering judgement. */
    private static final double BOILING_ONSET_FLUX = 5000;
    /** Floor of the static pressure while the root is sought, as a share of the boiler's. */
    private static final double LEAST_PRESSURE_SHARE = 1e-3;

    /** Share of the flow that could enter below which a cell gets nothing. */
    private static final double NOTHING_LEFT = 1e-13;

    private final TabulatedFluid fluid;
    private final ColumnGeometry geometry;
    private final double gasConstant;
    private final double gamma;
    private final double chokedFactor;
    private final double criticalRatio;
    private final double vapourViscosity;
    private final double evaporationCoefficient;
    private final double surfaceFactor;
    private final double momentumRecovery;
    private final double surfaceArea;
    private final double[] throatFactor;
    private final double[] cellLiquidEnthalpy;
    private final SaturationLine saturation;
    /** Nusselt's mean coefficient for a film group, h' and dT of one. */
    private final double filmFactor;
    /** Area over the heat that a kilogram gives to the wall, m2 kg/J. */
    private final double[] perCondensation;

    private final double[] perFlowArea;
    /** Reynolds number per mass flux, m2 s/kg. */
    private final double[] perViscousFlux;
    /** Laminar pressure drop times the pressure, per mass flux and Rs T. */
    private final double[] laminarFriction;
    /** First throat at or above the top of each cell's lower neighbour. */
    private final int[] firstStage;

    // inputs of the solution under way
    private double[] state;
    private int columnStart;
    private double oilK;
    private double saturationPa;
    private double forelinePa;
    private double evaporationFactor;
    private double latent;
    private double specificHeat;
    private double vapourEnthalpy;
    private double rsT;
    private double rootRsT;
    private double perSurfaceEnergy;

    // the march under way
    private double cap;
    private double ceiling;
    private double least;
    private double nextPa;
    private double nextTaken;
    private int reached;

    // the solution
    final double[] cellTake;
    final double[] cellPa;
    private final double[] cellAvailable;
    final double[] cellSaturationK;
    final double[] stageFlow;
    private final double[] stageAvailable;
    final double[] stagePa;
    private double flow;
    private double boilerPa;
    private double marchPa;

    VapourColumn(Rig rig, TabulatedFluid fluid, ParameterValues parameters, ColumnGeometry geometry) {
        this.fluid = fluid;
        this.geometry = geometry;
        gasConstant = fluid.specificGasConstant();
        gamma = fluid.heatCapacityRatio();
        chokedFactor = ChokedNozzle.chokedFactor(gamma);
        criticalRatio = ChokedNozzle.criticalPressureRatio(gamma);
        vapourViscosity = fluid.vapourViscosity();
        evaporationCoefficient = parameters.get(Parameter.EVAPORATION_COEFFICIENT);
        surfaceFactor = parameters.get(Parameter.BOILING_SURFACE_FACTOR);
        momentumRecovery = parameters.get(Parameter.MOMENTUM_RECOVERY);
        surfaceArea = rig.boiler().surfaceAreaM2();
        int stages = rig.stages().size();
        throatFactor = new double[stages];
        for (int k = 0; k < stages; k++) {
            throatFactor[k] = parameters.get(Parameter.DISCHARGE_COEFFICIENT)
                    * rig.stages().get(k).throatAreaM2()
                    * chokedFactor;
        }
        cellTake = new double[geometry.cells];
        cellPa = new double[geometry.cells];
        cellAvailable = new double[geometry.cells];
        cellSaturationK = new double[geometry.cells];
        cellLiquidEnthalpy = new double[geometry.cells];
        perCondensation = new double[geometry.cells];
        filmFactor = NusseltFilm.meanCoefficient(1, 1, geometry.heightM, 1);
        stageFlow = new double[stages];
        stageAvailable = new double[stages];
        stagePa = new double[stages];
        saturation = new SaturationLine(fluid, rig.foreline().pressurePa());
        perFlowArea = new double[geometry.cells];
        perViscousFlux = new double[geometry.cells];
        laminarFriction = new double[geometry.cells];
        for (int j = 0; j < geometry.cells; j++) {
            double bore = geometry.boreM[j];
            perFlowArea[j] = 1 / geometry.flowAreaM2[j];
            perViscousFlux[j] = bore / vapourViscosity;
            laminarFriction[j] = 32 * vapourViscosity * geometry.cellM[j] / (bore * bore);
        }
        firstStage = new int[geometry.cells + 1];
        for (int j = 0; j <= geometry.cells; j++) {
            while (firstStage[j] < stages && geometry.nozzleCell[firstStage[j]] < j) {
                firstStage[j]++;
            }
        }
    }

    /** Flow through throat k per Pa before it, times the root of Rs T; kg/s. */
    double fullFlow(int k, double pressurePa) {
        return throatFactor[k] * pressurePa / Math.sqrt(gasConstant * fluid.saturationTemperature(pressurePa));
    }

    /** Vapour leaving the boiler, kg/s. */
    double flow() {
        return flow;
    }

    /** Pressure over the oil, Pa. */
    double boilerPa() {
        return boilerPa;
    }

    /** Enthalpy of the vapour everywhere in the pump, J/kg. */
    double vapourEnthalpy() {
        return vapourEnthalpy;
    }

    /** Heat of vaporisation at the oil's temperature, J/kg. */
    double latentHeat() {
        return latent;
    }

    /** Specific heat of the liquid at the oil's temperature, J/(kg K). */
    double liquidSpecificHeat() {
        return specificHeat;
    }

    /** Liquid enthalpy at the temperature of cell j, J/kg. */
    double cellLiquidEnthalpy(int j) {
        return cellLiquidEnthalpy[j];
    }

    /** Share of the boiling onset reached, 0 to 1: how strongly the pool is stirred by its own vapour. */
    double boilingShare() {
        return 1 - Math.exp(-flow * latent / (surfaceArea * BOILING_ONSET_FLUX));
    }

    /** Mach number of the vapour entering the column. */
    double footMach() {
        return flow <= 0
                ? 0
                : ChokedNozzle.subsonicMach(flow / geometry.flowAreaM2[0] * Math.sqrt(rsT) / boilerPa, gamma);
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
        this.state = state;
        this.columnStart = columnStart;
        this.oilK = oilK;
        this.forelinePa = forelinePa;
        saturationPa = fluid.vapourPressure(oilK);
        latent = fluid.latentHeat(oilK);
        specificHeat = fluid.liquidSpecificHeat(oilK);
        vapourEnthalpy = fluid.liquidEnthalpy(oilK) + latent;
        rsT = gasConstant * oilK;
        rootRsT = Math.sqrt(rsT);
        perSurfaceEnergy = gasConstant / (latent * latent);
        evaporationFactor = evaporationCoefficient * surfaceArea / Math.sqrt(2 * Math.PI * rsT);
        for (int j = 0; j < geometry.cells; j++) {
            cellLiquidEnthalpy[j] = fluid.liquidEnthalpy(state[columnStart + j]);
            perCondensation[j] = geometry.innerAreaM2[j] / (vapourEnthalpy - cellLiquidEnthalpy[j]);
        }
        if (saturationPa <= forelinePa) {
            still();
            return;
        }
        flow = findFlow();
        boilerPa = marchPa;
        fillAbove();
    }

    /**
     * The root of m - march(m) between no flow and the flow at which the boiler would be at foreline pressure. The first two
     * trials depend on the state alone: all that can enter is taken; then halfway (by ratio) to takes in proportion to the
     * pressure, because they rise faster than that. After that inverse interpolation, kept inside the bracket. Returns what is taken at the root, so that mass closes to the last digit.
     */
    private double findFlow() {
        double low = 0;
        double high = evaporationFactor * surfaceFactor * (saturationPa - forelinePa);
        double open = geometry.flowAreaM2[0] * chokedFactor / Math.sqrt(rsT);
        double m = proportional(open, surfaceFactor);
        if (!(m < high)) {
            m = 0.5 * high;
        }
        double mBefore = Double.NaN;
        double gBefore = Double.NaN;
        double mTwoBefore = Double.NaN;
        double gTwoBefore = Double.NaN;
        for (int round = 0; round < MOST_TRIALS; round++) {
            double taken = march(m);
            double g = m - taken;
            if (Math.abs(g) <= ROOT_TOLERANCE * m) {
                return taken;
            }
            if (g > 0) {
                high = m;
            } else {
                low = m;
            }
            if (high - low <= ROOT_TOLERANCE * high) {
                return taken;
            }
            double next = round == 0
                    ? Math.sqrt(m * proportional(taken / marchPa, boiling(m)))
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

    /** Flow at which this conductance, kg/(s Pa) of boiler pressure, takes what evaporates. */
    private double proportional(double conductance, double boiling) {
        return conductance * saturationPa / (1 + conductance / (evaporationFactor * boiling));
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

    private void still() {
        flow = 0;
        boilerPa = forelinePa;
        java.util.Arrays.fill(cellTake, 0);
        java.util.Arrays.fill(cellAvailable, 0);
        java.util.Arrays.fill(cellPa, forelinePa);
        java.util.Arrays.fill(stageFlow, 0);
        java.util.Arrays.fill(stageAvailable, 0);
        java.util.Arrays.fill(stagePa, forelinePa);
        double saturationK = saturation.temperature(forelinePa);
        java.util.Arrays.fill(cellSaturationK, saturationK);
    }

    /** How much the vapour's own bubbles enlarge the surface, 1 to the parameter's value. */
    private double boiling(double m) {
        return 1 + (surfaceFactor - 1) * (1 - Math.exp(-m * latent / (surfaceArea * BOILING_ONSET_FLUX)));
    }

    /**
     * Marches the vapour upward for flow m at the foot and returns what cells and throats take together, kg/s. Stops where
     * nothing is left; {@link #fillAbove} then completes the solution.
     */
    private double march(double m) {
        double pv = pressureAt(m);
        marchPa = pv;
        nextTaken = 0;
        if (pv <= forelinePa) {
            reached = 0;
            nextPa = pv;
            return 0;
        }
        enter(m, pv);
        int j = 0;
        while (j < geometry.cells && cap - nextTaken > NOTHING_LEFT * cap) {
            climb(j, m, nextPa, nextTaken, state[columnStart + j], perCondensation[j]);
            j++;
        }
        reached = j;
        return nextTaken;
    }

    /** The foot of the column at boiler pressure pv: what could enter at most, and the static pressure there. */
    private void enter(double m, double pv) {
        cap = enterable(pv);
        ceiling = pv;
        least = LEAST_PRESSURE_SHARE * pv;
        double flux = m / geometry.flowAreaM2[0];
        nextPa = Math.max(least, pv - 0.75 * flux * flux * rsT / pv);
        nextTaken = 0;
    }

    /** One cell and the throats at its top, from pressure and sum taken below it to those above it. */
    private void climb(int j, double m, double pa, double takenBelow, double wallK, double perCondensation) {
        double perArea = perFlowArea[j];
        double flux = Math.max(0, m - takenBelow) * perArea;
        double p = Math.max(least, pa - friction(flux, pa, j));
        cellPa[j] = p;
        double available = cap - takenBelow;
        cellAvailable[j] = available;
        double take = limited(cellWant(j, p, wallK, perCondensation), available);
        cellTake[j] = take;
        double taken = takenBelow + take;
        double after = Math.max(0, m - taken) * perArea;
        double recovery = momentumRecovery * rsT / p;
        p = recovered(p, recovery, flux, after);
        for (int k = firstStage[j]; k < firstStage[j + 1]; k++) {
            stagePa[k] = p;
            stageAvailable[k] = cap - taken;
            double jet = limited(throatFactor[k] * p / rootRsT, cap - taken);
            stageFlow[k] = jet;
            taken += jet;
            double before = after;
            after = Math.max(0, m - taken) * perArea;
            p = recovered(p, momentumRecovery * rsT / p, before, after);
        }
        nextPa = p;
        nextTaken = taken;
    }

    /** Above the front nothing arrives and the pressure stays. */
    private void fillAbove() {
        if (reached == geometry.cells) {
            return;
        }
        double p = nextPa;
        double saturationK = saturation.temperature(p);
        for (int j = reached; j < geometry.cells; j++) {
            cellPa[j] = p;
            cellAvailable[j] = 0;
            cellTake[j] = 0;
            cellSaturationK[j] = saturationK;
        }
        for (int k = firstStage[reached]; k < stageFlow.length; k++) {
            stagePa[k] = p;
            stageFlow[k] = 0;
            stageAvailable[k] = 0;
        }
    }

    /** Darcy friction, laminar or Blasius, whichever is more; Pa. */
    private double friction(double flux, double p, int j) {
        if (flux <= 0) {
            return 0;
        }
        double laminar = laminarFriction[j] * flux;
        // both lines cross at this Reynolds number; above it the turbulent one is the higher
        if (flux * perViscousFlux[j] > EQUAL_FRICTION_REYNOLDS) {
            double reynolds = flux * perViscousFlux[j];
            laminar *= 0.316 / 64 * reynolds / Math.sqrt(Math.sqrt(reynolds));
        }
        return laminar * rsT / p;
    }

    private double recovered(double p, double recovery, double fluxBefore, double fluxAfter) {
        return Math.min(ceiling, p + recovery * (fluxBefore - fluxAfter) * (fluxBefore + fluxAfter));
    }

    /** What the wall of cell j would condense from plenty of vapour at pressure p, kg/s. */
    private double cellWant(int j, double p, double wallK, double perCondensation) {
        saturation.at(p);
        double saturationK = saturation.temperatureK;
        cellSaturationK[j] = saturationK;
        double dT = saturationK - wallK;
        if (dT <= 0) {
            return 0;
        }
        // the film's coefficient times dT; the power of 3/4 comes cheaper as two roots than through a quotient
        double filmK = wallK + dT / 2;
        double root = Math.sqrt(dT);
        double film = filmFactor
                * fluid.filmGroup(filmK)
                * Math.sqrt(Math.sqrt(latent + specificHeat * (oilK - filmK)))
                * root
                * Math.sqrt(root);
        double want = perCondensation * film * dT / (dT + film * saturation.interfaceResistance * perSurfaceEnergy);
        return limited(want, geometry.innerAreaM2[j] * saturation.kineticFlux);
    }

    /** How the condensation in cell j changes with what is available to it, 0 to 1: 1 where all that arrives is taken. */
    double takeShare(int j) {
        return share(cellTake[j], cellAvailable[j]);
    }

    /** How what the throats at the top of cell j leave changes with what is available to them, 0 to 1. */
    double passedShare(int j) {
        double passed = 1;
        for (int k = firstStage[j]; k < firstStage[j + 1]; k++) {
            passed *= 1 - share(stageFlow[k], stageAvailable[k]);
        }
        return passed;
    }

    /** Derivative of {@link #limited} in what is available. */
    private static double share(double take, double available) {
        if (available <= 0) {
            return 1;
        }
        double r = take / available;
        double r2 = r * r;
        double r4 = r2 * r2;
        return Math.min(1, r4 * r4 * r);
    }

    /** How what can enter the column changes with what leaves the boiler; negative, without unit. */
    double capSlope() {
        double step = 1e-6 * flow;
        double more = flow + step;
        return flow <= 0 ? 0 : (enterable(pressureAt(more)) - enterable(pressureAt(flow))) / step;
    }

    private double pressureAt(double m) {
        return saturationPa - m / (evaporationFactor * boiling(m));
    }

    private double enterable(double pv) {
        return pv <= forelinePa
                ? 0
                : geometry.flowAreaM2[0]
                        * ChokedNozzle.fluxFactor(forelinePa / pv, gamma, criticalRatio, chokedFactor)
                        * pv
                        / rootRsT;
    }

    /**
     * How the condensation in cell j changes with the temperature of its wall alone, kg/(s K), at the last solution; by a
     * difference towards the colder side.
     */
    double takeSlope(int j) {
        double wallK = state[columnStart + j];
        double dT = cellSaturationK[j] - wallK;
        if (dT <= 0 || cellAvailable[j] <= 0) {
            return 0;
        }
        double step = 1e-4 * dT;
        double heat = vapourEnthalpy - cellLiquidEnthalpy[j] + specificHeat * step;
        double colder = limited(cellWant(j, cellPa[j], wallK - step, geometry.innerAreaM2[j] / heat), cellAvailable[j]);
        return (cellTake[j] - colder) / step;
    }

    /** Smooth smaller of what is wanted and what there is: w a / (w^8 + a^8)^(1/8). */
    static double limited(double want, double available) {
        if (available <= 0 || want <= 0) {
            return 0;
        }
        // beyond this ratio the eighth power is below the last digit
        if (want < 0.01 * available) {
            return want;
        } else if (available < 0.01 * want) {
            return available;
        }
        double small = Math.min(want, available);
        double r = small / Math.max(want, available);
        double r2 = r * r;
        double r4 = r2 * r2;
        double r8 = r4 * r4;
        // below 1e-8 the first two terms of the series are exact to the last digit, and cheaper
        return r8 < 1e-8 ? small * (1 - 0.125 * r8) : small / Math.sqrt(Math.sqrt(Math.sqrt(1 + r8)));
    }
}
