package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.ChokedNozzle;
import boilwright.heattransfer.InterfaceResistance;
import boilwright.heattransfer.NusseltFilm;
import boilwright.numerics.Roots;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import java.util.function.DoubleUnaryOperator;

/**
 * The quasi-steady vapour between boiler and jets: from oil temperature, wall temperatures of the column and foreline
 * pressure it finds the one boiler flow at which evaporation equals what cells and throats take. The vapour is marched
 * upward with what is left, so nothing takes more than arrives and the front climbs by itself. Working arrays belong to
 * one run; nothing is allocated while solving.
 */
final class VapourColumn {
    private static final double ROOT_TOLERANCE = 1e-11;
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
    private final DoubleUnaryOperator imbalance = this::imbalance;

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

    // the solution
    final double[] cellTake;
    final double[] cellPa;
    private final double[] cellAvailable;
    final double[] cellSaturationK;
    final double[] stageFlow;
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
        stageFlow = new double[stages];
        stagePa = new double[stages];
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
        evaporationFactor = evaporationCoefficient * surfaceArea / Math.sqrt(2 * Math.PI * rsT);
        for (int j = 0; j < geometry.cells; j++) {
            cellLiquidEnthalpy[j] = fluid.liquidEnthalpy(state[columnStart + j]);
        }
        if (saturationPa <= forelinePa) {
            still();
            return;
        }
        double most = evaporationFactor * surfaceFactor * (saturationPa - forelinePa);
        double root = Roots.bracketed(imbalance, 0, most, ROOT_TOLERANCE, 0, "vapour flow of the boiler");
        // what is taken is what leaves, so that mass closes to the last digit
        flow = march(root);
        boilerPa = marchPa;
    }

    private void still() {
        flow = 0;
        boilerPa = forelinePa;
        java.util.Arrays.fill(cellTake, 0);
        java.util.Arrays.fill(cellAvailable, 0);
        java.util.Arrays.fill(cellPa, forelinePa);
        java.util.Arrays.fill(stageFlow, 0);
        java.util.Arrays.fill(stagePa, forelinePa);
        double saturationK = fluid.saturationTemperature(forelinePa);
        java.util.Arrays.fill(cellSaturationK, saturationK);
    }

    private double imbalance(double m) {
        return m - march(m);
    }

    private double boilerPressure(double m) {
        double boiling = 1 + (surfaceFactor - 1) * (1 - Math.exp(-m * latent / (surfaceArea * BOILING_ONSET_FLUX)));
        return saturationPa - m / (evaporationFactor * boiling);
    }

    /** Marches the vapour upward for flow m at the foot and returns what cells and throats take together, kg/s. */
    private double march(double m) {
        double pv = boilerPressure(m);
        marchPa = pv;
        if (pv <= forelinePa) {
            java.util.Arrays.fill(cellTake, 0);
            java.util.Arrays.fill(stageFlow, 0);
            return 0;
        }
        double cap = geometry.flowAreaM2[0]
                * ChokedNozzle.fluxFactor(forelinePa / pv, gamma, criticalRatio, chokedFactor)
                * pv
                / Math.sqrt(rsT);
        double least = LEAST_PRESSURE_SHARE * pv;
        double flux = m / geometry.flowAreaM2[0];
        double density = pv / rsT;
        double p = Math.max(least, pv - 0.75 * flux * flux / density);
        double taken = 0;
        int stage = 0;
        for (int j = 0; j < geometry.cells; j++) {
            double area = geometry.flowAreaM2[j];
            flux = Math.max(0, m - taken) / area;
            p = Math.max(least, p - friction(flux, p, j));
            cellPa[j] = p;
            double available = cap - taken;
            cellAvailable[j] = available;
            double take = available <= NOTHING_LEFT * cap
                    ? nothing(j, p)
                    : limited(cellWant(j, p, state[columnStart + j], cellLiquidEnthalpy[j]), available);
            cellTake[j] = take;
            taken += take;
            p = recovered(p, flux, Math.max(0, m - taken) / area, pv);
            while (stage < stageFlow.length && geometry.nozzleCell[stage] == j) {
                stagePa[stage] = p;
                double before = Math.max(0, m - taken) / area;
                double jet = limited(throatFactor[stage] * p / Math.sqrt(rsT), cap - taken);
                stageFlow[stage] = jet;
                taken += jet;
                p = recovered(p, before, Math.max(0, m - taken) / area, pv);
                stage++;
            }
        }
        return taken;
    }

    /** Above the front nothing arrives: no need to ask what the wall would like. */
    private double nothing(int j, double p) {
        cellSaturationK[j] = fluid.saturationTemperature(p);
        return 0;
    }

    private double friction(double flux, double p, int j) {
        if (flux <= 0) {
            return 0;
        }
        double reynolds = flux * geometry.boreM[j] / vapourViscosity;
        double factor = Math.max(64 / reynolds, 0.316 / Math.sqrt(Math.sqrt(reynolds)));
        return factor * geometry.cellM[j] / geometry.boreM[j] * flux * flux * rsT / (2 * p);
    }

    private double recovered(double p, double fluxBefore, double fluxAfter, double ceiling) {
        double given = momentumRecovery * (fluxBefore * fluxBefore - fluxAfter * fluxAfter) * rsT / p;
        return Math.min(ceiling, p + given);
    }

    /** What the wall of cell j would condense from plenty of vapour at pressure p, kg/s. */
    private double cellWant(int j, double p, double wallK, double liquidEnthalpy) {
        double saturationK = fluid.saturationTemperature(p);
        cellSaturationK[j] = saturationK;
        double dT = saturationK - wallK;
        if (dT <= 0) {
            return 0;
        }
        double filmK = wallK + dT / 2;
        double film = NusseltFilm.meanCoefficient(
                fluid.filmGroup(filmK), latent + specificHeat * (oilK - filmK), geometry.heightM, dT);
        double surface = InterfaceResistance.coefficient(p, saturationK, gasConstant, latent);
        double area = geometry.innerAreaM2[j];
        double want = area * dT * film * surface / (film + surface) / (vapourEnthalpy - liquidEnthalpy);
        return limited(want, area * p / Math.sqrt(2 * Math.PI * gasConstant * saturationK));
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
        double enthalpy = cellLiquidEnthalpy[j] - specificHeat * step;
        double colder = limited(cellWant(j, cellPa[j], wallK - step, enthalpy), cellAvailable[j]);
        return (cellTake[j] - colder) / step;
    }

    /** Smooth smaller of what is wanted and what there is: w a / (w^8 + a^8)^(1/8). */
    static double limited(double want, double available) {
        if (available <= 0 || want <= 0) {
            return 0;
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
