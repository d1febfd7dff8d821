package boilwright.thermal;

import boilwright.fluid.TabulatedFluid;
import boilwright.gasflow.ChokedNozzle;
import boilwright.rig.Parameter;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;

/**
 * Which jets are lit and full: discrete modes with hysteresis, changed between evaluations only. A stage is lit when it
 * carries half its full flow, when the pressure it works against is below what it can hold, and when half of its vapour
 * condenses.
 */
final class JetModes {
    static final double LIT_AT = 0.50;
    static final double LOST_AT = 0.45;
    static final double FULL_AT = 0.90;
    static final double NOT_FULL_AT = 0.85;
    /** A lit jet holds on until the pressure against it is this much above what would let it light. */
    private static final double PRESSURE_HYSTERESIS = 0.95;

    private static final int MOST_ROUNDS = 20;

    final int stages;
    double requiredPa;
    final double[] outletPa;
    final double[] fraction;
    final double[] fullFlow;
    private final boolean[] lit;
    private final boolean[] full;
    private final double holdingRatio;
    private final double backingRatio;
    private final double compression;
    private final double design;
    private final VapourColumn column;
    private double forelinePa;

    JetModes(Rig rig, TabulatedFluid fluid, ParameterValues parameters, VapourColumn column, double forelinePa) {
        this.column = column;
        stages = rig.stages().size();
        backingRatio = parameters.get(Parameter.CRITICAL_BACKING_RATIO);
        holdingRatio = Math.min(backingRatio, ChokedNozzle.criticalPressureRatio(fluid.heatCapacityRatio()));
        compression = parameters.get(Parameter.STAGE_COMPRESSION);
        design = rig.limits().requiredBoilerPressurePa().orElse(fluid.usualBoilerPressure());
        lit = new boolean[stages];
        full = new boolean[stages];
        outletPa = new double[stages];
        fraction = new double[stages];
        fullFlow = new double[stages];
        require(forelinePa);
        allDark();
    }

    private void require(double pressurePa) {
        forelinePa = pressurePa;
        double required = Math.max(design, 2 * pressurePa / backingRatio);
        if (required != requiredPa) {
            requiredPa = required;
            for (int k = 0; k < stages; k++) {
                fullFlow[k] = column.fullFlow(k, required);
            }
        }
    }

    /** Takes over another foreline pressure, Pa. */
    void against(double pressurePa) {
        if (pressurePa != forelinePa) {
            require(pressurePa);
            updateOutlets();
        }
    }

    static int mostRounds() {
        return MOST_ROUNDS;
    }

    void allDark() {
        java.util.Arrays.fill(lit, false);
        java.util.Arrays.fill(full, false);
        updateOutlets();
    }

    boolean isLit(int k) {
        return lit[k];
    }

    boolean isFull(int k) {
        return full[k];
    }

    boolean allFull() {
        for (boolean f : full) {
            if (!f) {
                return false;
            }
        }
        return true;
    }

    /** Foreline pressure at which a stage with this pressure before its throat fails, Pa. */
    double criticalBacking(double stagePa) {
        return backingRatio * stagePa;
    }

    private void updateOutlets() {
        double against = forelinePa;
        for (int k = 0; k < stages; k++) {
            outletPa[k] = against;
            against = lit[k] ? against / compression : forelinePa;
        }
    }

    /** Takes the flows of a solved column. */
    void measure(VapourColumn column) {
        for (int k = 0; k < stages; k++) {
            fraction[k] = column.stageFlow[k] / fullFlow[k];
        }
    }

    /** Highest pressure that a stage with this pressure before its throat can work against, Pa. */
    double holdablePa(double stagePa) {
        return holdingRatio * stagePa;
    }

    /** How much of the pressure it can hold stage k has to spare: 1 at the limit. */
    double holding(int k, double stagePa) {
        return holdingRatio * stagePa / outletPa[k];
    }

    /** Positive when stage k should change between lit and dark. */
    double litExcess(int k, VapourColumn column, CondensingWalls walls) {
        double threshold = lit[k] ? LOST_AT : LIT_AT;
        double pressure = holding(k, column.stagePa[k]) - (lit[k] ? PRESSURE_HYSTERESIS : 1);
        double least = Math.min(Math.min(fraction[k] - threshold, pressure), walls.condensedShare[k] - threshold);
        return lit[k] ? -least : least;
    }

    /** Positive when stage k should change between full and not full. */
    double fullExcess(int k) {
        if (full[k]) {
            return lit[k] ? NOT_FULL_AT - fraction[k] : 1;
        }
        return lit[k] ? fraction[k] - FULL_AT : -1;
    }

    void toggleLit(int k) {
        lit[k] = !lit[k];
        updateOutlets();
    }

    void toggleFull(int k) {
        full[k] = !full[k];
    }
}
