package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.ChokedNozzle;
import boilwright.heattransfer.NusseltFilm;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.Arrays;

/**
 * One way of the vapour up the column for a given flow at its foot: friction, what cells condense, what throats take. The
 * innermost loop of everything, written so that each cell waits for few quotients and roots. Working arrays belong to one
 * run; nothing is allocated while marching.
 */
final class VapourMarch {
    /** Where 64/Re and 0.316 Re^-1/4 are equal. */
    private static final double EQUAL_FRICTION_REYNOLDS = Math.pow(64 / 0.316, 4.0 / 3);
    /** Latent heat flux at which the boiling surface has grown most of the way, W/m2; engineering judgement. */
    private static final double BOILING_ONSET_FLUX = 5000;
    /** Share of the flow that could enter below which a cell gets nothing. */
    private static final double NOTHING_LEFT = 1e-13;

    /** Where this multiple of what can enter is wanted, nothing is left at the top. */
    private static final double SURELY_TAKEN = 2;

    private static final int ROUGH_ROUNDS = 7;
    private static final int ENTERING_TRIALS = 30;
    private static final double ENTERING_TOLERANCE = 1e-13;

    private final TabulatedFluid fluid;
    private final ColumnGeometry geometry;
    private final double gasConstant;
    private final double gamma;
    private final double criticalRatio;
    private final double evaporationCoefficient;
    private final double momentumRecovery;
    private final SaturationLine saturation;
    /** Nusselt's mean coefficient for a film group, h' and dT of one. */
    private final double filmFactor;

    private final double[] perFlowArea;
    /** Reynolds number per mass flux, m2 s/kg. */
    private final double[] perViscousFlux;
    /** Laminar pressure drop times the pressure, per mass flux and Rs T. */
    private final double[] laminarFriction;

    final double chokedFactor;
    final double surfaceFactor;
    final double surfaceArea;
    private final double throatSum;
    /** Flow through each throat per Pa before it, times the root of Rs T. */
    final double[] throatFactor;
    /** First throat at or above the top of each cell's lower neighbour. */
    final int[] firstStage;

    // inputs of the solution under way
    private double[] state;
    private int columnStart;
    private double oilK;
    private double perSurfaceEnergy;
    private double rootRsT;
    double saturationPa;
    double forelinePa;
    double evaporationFactor;
    double latent;
    double specificHeat;
    double vapourEnthalpy;
    double rsT;
    final double[] cellLiquidEnthalpy;
    /** Area over the heat that a kilogram gives to the wall, m2 kg/J. */
    final double[] perCondensation;

    // the march under way
    private double cap;
    private double ceiling;
    private double least;
    /** Pressure over the oil, Pa. */
    double boilerPa;
    /** Pressure and sum taken above the cell climbed last. */
    double nextPa;

    double nextTaken;
    /** Cells that vapour reached. */
    int reached;

    // the solution
    final double[] cellTake;
    final double[] cellPa;
    final double[] cellAvailable;
    final double[] cellSaturationK;
    final double[] stageFlow;
    final double[] stageAvailable;
    final double[] stagePa;

    VapourMarch(
            Rig rig,
            TabulatedFluid fluid,
            ParameterValues parameters,
            ColumnGeometry geometry,
            double restingForelinePa) {
        this.fluid = fluid;
        this.geometry = geometry;
        gasConstant = fluid.specificGasConstant();
        gamma = fluid.heatCapacityRatio();
        chokedFactor = ChokedNozzle.chokedFactor(gamma);
        criticalRatio = ChokedNozzle.criticalPressureRatio(gamma);
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
        throatSum = Arrays.stream(throatFactor).sum();
        int cells = geometry.cells;
        cellTake = new double[cells];
        cellPa = new double[cells];
        cellAvailable = new double[cells];
        cellSaturationK = new double[cells];
        cellLiquidEnthalpy = new double[cells];
        perCondensation = new double[cells];
        stageFlow = new double[stages];
        stageAvailable = new double[stages];
        stagePa = new double[stages];
        filmFactor = NusseltFilm.meanCoefficient(1, 1, geometry.heightM, 1);
        saturation = new SaturationLine(fluid, restingForelinePa);
        perFlowArea = new double[cells];
        perViscousFlux = new double[cells];
        laminarFriction = new double[cells];
        for (int j = 0; j < cells; j++) {
            double bore = geometry.boreM[j];
            perFlowArea[j] = 1 / geometry.flowAreaM2[j];
            perViscousFlux[j] = bore / fluid.vapourViscosity();
            laminarFriction[j] = 32 * fluid.vapourViscosity() * geometry.cellM[j] / (bore * bore);
        }
        firstStage = geometry.firstThroats();
    }

    /** Takes the state over: oil temperature, K; cell temperatures from the given index of an array; foreline pressure, Pa. */
    void prepare(double oil, double[] temperatures, int start, double foreline) {
        state = temperatures;
        columnStart = start;
        oilK = oil;
        forelinePa = foreline;
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
    }

    /** No vapour anywhere. */
    void still() {
        reached = 0;
        nextPa = forelinePa;
        nextTaken = 0;
        boilerPa = forelinePa;
        Arrays.fill(cellTake, 0);
        Arrays.fill(cellAvailable, 0);
        Arrays.fill(cellPa, forelinePa);
        Arrays.fill(stageFlow, 0);
        Arrays.fill(stageAvailable, 0);
        Arrays.fill(stagePa, forelinePa);
        double saturationK = saturation.temperature(forelinePa);
        Arrays.fill(cellSaturationK, saturationK);
    }

    /** How much the vapour's own bubbles enlarge the surface, 1 to the parameter's value. */
    double boiling(double m) {
        return 1 + (surfaceFactor - 1) * boilingShare(m);
    }

    /** Share of the boiling onset reached at flow m, 0 to 1. */
    double boilingShare(double m) {
        return 1 - Math.exp(-m * latent / (surfaceArea * BOILING_ONSET_FLUX));
    }

    /** Slope of {@link #boilingShare} in the flow, s/kg. */
    double boilingShareSlope(double m) {
        double per = latent / (surfaceArea * BOILING_ONSET_FLUX);
        return per * Math.exp(-m * per);
    }

    /** Pressure over the oil at which it gives off this flow, Pa. */
    double boilerPressure(double m) {
        return saturationPa - m / (evaporationFactor * boiling(m));
    }

    /** Temperature of cell j, K. */
    double cellK(int j) {
        return state[columnStart + j];
    }

    /** Specific heat of the liquid at the temperature of cell j, J/(kg K). */
    double cellSpecificHeat(int j) {
        return fluid.liquidSpecificHeat(state[columnStart + j]);
    }

    /**
     * Marches the vapour upward for flow m at the foot and returns what cells and throats take together, kg/s. Stops where
     * nothing is left; {@link #fillAbove} then completes the solution.
     */
    double march(double m) {
        double pv = boilerPressure(m);
        boilerPa = pv;
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
    void enter(double m, double pv) {
        cap = enterable(pv);
        ceiling = pv;
        // gas at foreline pressure stands above the vapour: friction cannot take the column below that
        least = forelinePa;
        double flux = m / geometry.flowAreaM2[0];
        nextPa = Math.max(least, pv - 0.75 * flux * flux * rsT / pv);
        nextTaken = 0;
    }

    /** One cell and the throats at its top, from pressure and sum taken below it to those above it. */
    void climb(int j, double m, double pa, double takenBelow, double wallK, double perCondensation) {
        double perArea = perFlowArea[j];
        double flux = Math.max(0, m - takenBelow) * perArea;
        double p = Math.max(least, pa - friction(flux, pa, j));
        cellPa[j] = p;
        double available = cap - takenBelow;
        cellAvailable[j] = available;
        double take = take(cellWant(j, p, wallK, perCondensation), available);
        cellTake[j] = take;
        double taken = takenBelow + take;
        double after = Math.max(0, m - taken) * perArea;
        double recovery = momentumRecovery * rsT / p;
        p = recovered(p, recovery, flux, after);
        for (int k = firstStage[j]; k < firstStage[j + 1]; k++) {
            stagePa[k] = p;
            stageAvailable[k] = cap - taken;
            double jet = take(throatFactor[k] * p / rootRsT, cap - taken);
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
    void fillAbove() {
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
    double cellWant(int j, double p, double wallK, double perCondensation) {
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
        return take(want, geometry.innerAreaM2[j] * saturation.kineticFlux);
    }

    /** How what can enter the column changes with what leaves the boiler, flow m; negative, without unit. */
    double capSlope(double m) {
        double step = 1e-6 * m;
        return m <= 0 ? 0 : (enterable(boilerPressure(m + step)) - enterable(boilerPressure(m))) / step;
    }

    /**
     * The flow that leaves the boiler when the column takes all that can enter, kg/s: an upper bound of every solution. By
     * secants from the choked flow, kept below the given bound; not quite exact where it converges slowly, near the onset.
     */
    double mostEntering(double bound) {
        double open = geometry.flowAreaM2[0] * chokedFactor / rootRsT;
        double b = Math.min(0.5 * bound, open * saturationPa / (1 + open / (evaporationFactor * surfaceFactor)));
        double gb = b - enterable(boilerPressure(b));
        double a = 0.99 * b;
        for (int round = 0; round < ENTERING_TRIALS && Math.abs(gb) > ENTERING_TOLERANCE * b; round++) {
            double ga = a - enterable(boilerPressure(a));
            double next = a - ga * (a - b) / (ga - gb);
            b = a;
            gb = ga;
            a = next > 0 && next < bound ? next : 0.5 * (a + (next > 0 ? bound : 0));
        }
        return Math.min(Math.max(b, 1e-12 * bound), 0.999999 * bound);
    }

    /**
     * Where the flow will be, roughly, kg/s: three cells stand for all and pressure is lost nowhere. Equal to the most that
     * can enter where that is all taken.
     */
    double roughFlow(double entering) {
        if (roughWant(boilerPressure(entering)) > SURELY_TAKEN * entering) {
            return entering;
        }
        double low = 0;
        double high = entering;
        double m = high;
        for (int round = 0; round < ROUGH_ROUNDS; round++) {
            double pv = boilerPressure(m);
            double taken = take(roughWant(pv), enterable(pv));
            if (taken < m) {
                high = m;
            } else {
                low = m;
            }
            m = 0.5 * (low + high);
        }
        return m;
    }

    private double roughWant(double pv) {
        int n = geometry.cells;
        double cells = 0;
        for (int i = 1; i < 6; i += 2) {
            int j = i * n / 6;
            cells += cellWant(j, pv, state[columnStart + j], perCondensation[j]);
        }
        return throatSum * pv / rootRsT + n / 3.0 * cells;
    }

    private double enterable(double pv) {
        return pv <= forelinePa
                ? 0
                : geometry.flowAreaM2[0]
                        * ChokedNozzle.fluxFactor(forelinePa / pv, gamma, criticalRatio, chokedFactor)
                        * pv
                        / rootRsT;
    }

    /** Smooth smaller of what is wanted and what there is: w a / (w^8 + a^8)^(1/8). */
    static double take(double want, double available) {
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
        // binomial series: below 1e-3 five terms are exact to the last digit, and cheaper than three roots
        return r8 < 1e-3
                ? small * (1 - r8 * (1.0 / 8 - r8 * (9.0 / 128 - r8 * (153.0 / 3072 - r8 * (3825.0 / 98304)))))
                : small / Math.sqrt(Math.sqrt(Math.sqrt(1 + r8)));
    }

    /** Derivative of {@link #take} in what is available. */
    static double share(double take, double available) {
        if (available <= 0) {
            return 1;
        }
        double r = take / available;
        double r2 = r * r;
        double r4 = r2 * r2;
        return Math.min(1, r4 * r4 * r);
    }

    /** How the condensation in cell j changes with what is available to it, 0 to 1: 1 where all that arrives is taken. */
    double takeShare(int j) {
        return VapourMarch.share(cellTake[j], cellAvailable[j]);
    }

    /** How what the throats at the top of cell j leave changes with what is available to them, 0 to 1. */
    double passedShare(int j) {
        double passed = 1;
        for (int k = firstStage[j]; k < firstStage[j + 1]; k++) {
            passed *= 1 - VapourMarch.share(stageFlow[k], stageAvailable[k]);
        }
        return passed;
    }

    /**
     * How the condensation in cell j changes with the temperature of its wall alone, kg/(s K), at the last solution; by a
     * difference towards the colder side.
     */
    double takeSlope(double areaM2, int j) {
        double wallK = cellK(j);
        double dT = cellSaturationK[j] - wallK;
        if (dT <= 0 || cellAvailable[j] <= 0) {
            return 0;
        }
        double step = 1e-4 * dT;
        double heat = vapourEnthalpy - cellLiquidEnthalpy[j] + specificHeat * step;
        double colder = VapourMarch.take(cellWant(j, cellPa[j], wallK - step, areaM2 / heat), cellAvailable[j]);
        return (cellTake[j] - colder) / step;
    }
}
