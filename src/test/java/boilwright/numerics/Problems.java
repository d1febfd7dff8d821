package boilwright.numerics;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/** Equations that several tests integrate. */
public final class Problems {
    private Problems() {}

    /** The same absolute tolerance for each of the components. */
    public static Tolerances uniform(int size, double relative, double absolute) {
        double[] all = new double[size];
        Arrays.fill(all, absolute);
        return new Tolerances(relative, all);
    }

    /** The state at a time within a step. */
    public static double[] stateAt(StepInterpolant step, int size, double t) {
        double[] y = new double[size];
        step.stateAt(t, y);
        return y;
    }

    /** The right-hand side alone. */
    interface Rates {
        void into(double t, double[] y, double[] dydt);
    }

    static OdeSystem of(int size, Rates rates) {
        return new OdeSystem() {
            @Override
            public int size() {
                return size;
            }

            @Override
            public void derivative(double t, double[] y, double[] dydt) {
                rates.into(t, y, dydt);
            }
        };
    }

    /**
     * y' = lambda (y - g(t)) + g'(t) with g = cos t (A. Prothero, A. Robinson, Math. Comp. 28 (1974) 145): the solution
     * from y(0) = 1 is cos t, however stiff lambda makes it.
     */
    static OdeSystem protheroRobinson(double lambda) {
        return of(1, (t, y, f) -> f[0] = lambda * (y[0] - Math.cos(t)) - Math.sin(t));
    }

    /** Heat conduction along a bar of n cells with cold ends, cell width 1/(n + 1): eigenvalues are known exactly. */
    static OdeSystem bar(int n) {
        double scale = (n + 1.0) * (n + 1.0);
        return of(n, (t, y, f) -> {
            for (int i = 0; i < n; i++) {
                double left = i == 0 ? 0 : y[i - 1];
                double right = i == n - 1 ? 0 : y[i + 1];
                f[i] = scale * (left - 2 * y[i] + right);
            }
        });
    }

    /** An event that is counted by its owner. */
    static EventFunction event(int id, EventFunction.Direction direction, Watched watched, Told told) {
        return new EventFunction() {
            @Override
            public int id() {
                return id;
            }

            @Override
            public EventFunction.Direction direction() {
                return direction;
            }

            @Override
            public double value(double t, double[] y) {
                return watched.value(t, y);
            }

            @Override
            public EventFunction.Action occurred(double t, double[] y, boolean rising) {
                return told.occurred(t, y, rising);
            }
        };
    }

    interface Watched {
        double value(double t, double[] y);
    }

    interface Told {
        EventFunction.Action occurred(double t, double[] y, boolean rising);
    }

    /** Observed order from errors at tolerances or steps that differ by a factor. */
    static double order(DoubleUnaryOperator error, double coarse, double fine) {
        return Math.log(error.applyAsDouble(coarse) / error.applyAsDouble(fine)) / Math.log(coarse / fine);
    }
}
