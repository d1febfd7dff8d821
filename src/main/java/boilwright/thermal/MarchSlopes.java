package boilwright.thermal;

/** How single cells and throats of a solved march answer, for settling the column by itself. */
final class MarchSlopes {
    private MarchSlopes() {}

    /** How the condensation in cell j changes with what is available to it, 0 to 1: 1 where all that arrives is taken. */
    static double takeShare(VapourMarch march, int j) {
        return SmoothLimit.share(march.cellTake[j], march.cellAvailable[j]);
    }

    /** How what the throats at the top of cell j leave changes with what is available to them, 0 to 1. */
    static double passedShare(VapourMarch march, int j) {
        double passed = 1;
        for (int k = march.firstStage[j]; k < march.firstStage[j + 1]; k++) {
            passed *= 1 - SmoothLimit.share(march.stageFlow[k], march.stageAvailable[k]);
        }
        return passed;
    }

    /**
     * How the condensation in cell j changes with the temperature of its wall alone, kg/(s K), at the last solution; by a
     * difference towards the colder side.
     */
    static double takeSlope(VapourMarch march, double areaM2, int j) {
        double wallK = march.cellK(j);
        double dT = march.cellSaturationK[j] - wallK;
        if (dT <= 0 || march.cellAvailable[j] <= 0) {
            return 0;
        }
        double step = 1e-4 * dT;
        double heat = march.vapourEnthalpy - march.cellLiquidEnthalpy[j] + march.specificHeat * step;
        double colder = SmoothLimit.take(
                march.cellWant(j, march.cellPa[j], wallK - step, areaM2 / heat), march.cellAvailable[j]);
        return (march.cellTake[j] - colder) / step;
    }
}
