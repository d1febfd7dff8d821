package boilwright.vacuum;

import boilwright.numerics.StepHandler;
import boilwright.numerics.StepInterpolant;
import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;

/** Writes the pressures of a pump-down down, stretch after stretch. */
final class VacuumRecorder {
    private static final double LONGEST_GAP_S = 120;
    private static final int COLUMNS = 5;

    private double[][] columns = new double[COLUMNS][256];
    private int size;

    /**
     * A handler for one stretch.
     *
     * @param system its equations
     * @param gauge junction at which the gauge sits
     * @param foreline foreline pressure at a time for the gas that arrives
     */
    StepHandler of(ChamberSystem system, int gauge, DoubleBinaryOperator foreline) {
        double[] work = new double[system.size()];
        return new StepHandler() {
            @Override
            public void started(double t, double[] y) {
                add(system, gauge, foreline, t, y[ChamberSystem.LOG_PRESSURE]);
            }

            @Override
            public void stretch(StepInterpolant solution, double from, double to) {
                int parts = (int) Math.max(1, Math.ceil((to - from) / LONGEST_GAP_S));
                for (int i = 1; i <= parts; i++) {
                    double t = i == parts ? to : from + (to - from) * i / parts;
                    solution.stateAt(t, work);
                    add(system, gauge, foreline, t, work[ChamberSystem.LOG_PRESSURE]);
                }
            }
        };
    }

    private void add(ChamberSystem system, int gauge, DoubleBinaryOperator foreline, double t, double log) {
        if (size == columns[0].length) {
            for (int k = 0; k < COLUMNS; k++) {
                columns[k] = Arrays.copyOf(columns[k], 2 * size);
            }
        }
        double pressure = Math.exp(log);
        double left = system.leaving(t, pressure);
        double[] junctions = system.line().junctionPa;
        columns[0][size] = t;
        columns[1][size] = pressure;
        columns[2][size] = gauge == 0 ? pressure : junctions[gauge];
        columns[3][size] = junctions[junctions.length - 1];
        columns[4][size] = foreline.applyAsDouble(t, Math.max(0, left + system.ofLine(t)));
        size++;
    }

    /** Moves everything written so far in time. */
    void shift(double seconds) {
        for (int i = 0; i < size; i++) {
            columns[0][i] += seconds;
        }
    }

    VacuumTimeline timeline(Crossover crossover, double balance) {
        double[][] trimmed = new double[COLUMNS][];
        for (int k = 0; k < COLUMNS; k++) {
            trimmed[k] = Arrays.copyOf(columns[k], size);
        }
        return new VacuumTimeline(trimmed[0], trimmed[1], trimmed[2], trimmed[3], trimmed[4], crossover, balance);
    }
}
