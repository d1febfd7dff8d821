package boilwright.numerics;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;

/**
 * The equations as the integrators see them: counts calls, looks at the cancel token, keeps times below the next stop
 * point, and turns states that can't exist into a plain "no" in place of an exception.
 */
final class TrialSystem {
    private static final int CALLS_BETWEEN_LOOKS = 64;

    final OdeSystem system;
    final OdeStatistics.Counters counters;
    private final CancelToken cancel;
    private double latest = Double.POSITIVE_INFINITY;
    private ComputationException lastFault;
    private boolean lastNotAdmissible;

    TrialSystem(OdeSystem system, OdeStatistics.Counters counters, CancelToken cancel) {
        this.system = system;
        this.counters = counters;
        this.cancel = cancel;
    }

    int size() {
        return system.size();
    }

    /** From here on, times at or after this stop point are seen as the last instant before it. */
    void stopPointAhead(double time) {
        latest = Math.nextDown(time);
    }

    /** The time at which the equations are asked, s. */
    double seen(double t) {
        return Math.min(t, latest);
    }

    /**
     * The derivative at a state from which integration goes on.
     *
     * @throws ComputationException when there is none, with what the equations said about it
     */
    void start(double t, double[] y, double[] dydt) {
        if (!isAdmissible(t, y)) {
            throw startNotPossible(t);
        }
        count();
        system.derivative(seen(t), y, dydt);
        for (int i = 0; i < dydt.length; i++) {
            if (!Double.isFinite(dydt[i])) {
                throw new ComputationException(
                        Message.of(MessageKey.DERIVATIVE_NOT_A_NUMBER, Double.toString(t), system.componentName(i)));
            }
        }
    }

    /** The derivative at a trial state; false when that state can't exist or its derivative is not a finite number. */
    boolean tryDerivative(double t, double[] y, double[] dydt) {
        if (!isAdmissible(t, y)) {
            return false;
        }
        count();
        try {
            system.derivative(seen(t), y, dydt);
        } catch (ComputationException fault) {
            lastFault = fault;
            return false;
        }
        return allFinite(dydt);
    }

    /** The matrix of partial derivatives at a state from which integration goes on. */
    void jacobian(double t, double[] y, double[] dydt, double[][] jacobian) {
        cancel.check();
        counters.jacobians++;
        system.jacobian(seen(t), y, dydt, jacobian);
    }

    /** Whether a trial state is finite and admissible. */
    boolean isAdmissible(double t, double[] y) {
        lastFault = null;
        lastNotAdmissible = !allFinite(y) || !system.isAdmissible(seen(t), y);
        return !lastNotAdmissible;
    }

    private boolean allFinite(double[] values) {
        for (double v : values) {
            if (!Double.isFinite(v)) {
                lastNotAdmissible = true;
                return false;
            }
        }
        return true;
    }

    private void count() {
        counters.derivatives++;
        if (counters.derivatives % CALLS_BETWEEN_LOOKS == 0) {
            cancel.check();
        }
    }

    /** Clears what is remembered of the latest failure: a trial step begins, or its states were all possible. */
    void forgetFault() {
        lastFault = null;
        lastNotAdmissible = false;
    }

    ComputationException startNotPossible(double t) {
        return withCause(new ComputationException(Message.of(MessageKey.START_STATE_NOT_POSSIBLE, Double.toString(t))));
    }

    /** What to throw when even the smallest step is not accepted. */
    ComputationException stepTooSmall(double t, double step, int worst) {
        String name = worst < 0 ? "-" : system.componentName(worst);
        MessageKey key =
                lastFault != null || lastNotAdmissible ? MessageKey.STEP_LEAVES_RANGE : MessageKey.STEP_TOO_SMALL;
        return withCause(new ComputationException(Message.of(key, Double.toString(t), Double.toString(step), name)));
    }

    private ComputationException withCause(ComputationException e) {
        if (lastFault != null) {
            e.initCause(lastFault);
        }
        return e;
    }
}
