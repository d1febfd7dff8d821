package boilwright.numerics;

import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Knows on which side of zero every event value was last seen, and finds crossings within a stretch of the dense
 * solution in the order of time (equal times: in the order of the list).
 */
final class EventWatch implements DoubleUnaryOperator {
    private final TrialSystem system;
    private final EventFunction[] functions;
    private final double tolerance;
    /** Side of zero last seen: -1, 1, or 0 for a value that has been exactly zero since it was first seen. */
    private final int[] side;
    /** Where the crossing of each function was located; NaN where none is waiting. */
    private final double[] crossing;
    /** Values at the latest time looked at, and at the end of the stretch looked at now. */
    private final double[] latest;

    private final double[] atEnd;
    private final double[] state;
    private StepInterpolant solution;
    private EventFunction sought;

    EventWatch(TrialSystem system, List<EventFunction> functions, double tolerance) {
        this.system = system;
        this.functions = functions.toArray(EventFunction[]::new);
        this.tolerance = tolerance;
        side = new int[this.functions.length];
        crossing = new double[this.functions.length];
        latest = new double[this.functions.length];
        atEnd = new double[this.functions.length];
        state = new double[system.size()];
    }

    /** Whether the latest change of side of this event was upward. */
    boolean roseLast(int k) {
        return side[k] > 0;
    }

    /** Looks at all values for the first time. */
    void begin(double t, double[] y) {
        for (int k = 0; k < functions.length; k++) {
            latest[k] = valueAt(functions[k], t, y);
            side[k] = (int) Math.signum(latest[k]);
        }
    }

    /**
     * Looks at all values again after derivatives jumped, except that of the event that made them jump.
     *
     * @param cause the event that made them jump, or -1
     * @return the first event whose value changed sign in a watched direction, or -1; call again until then
     */
    int jumped(double t, double[] y, int cause) {
        for (int k = 0; k < functions.length; k++) {
            double value = valueAt(functions[k], t, y);
            latest[k] = value;
            int now = (int) Math.signum(value);
            if (k == cause) {
                side[k] = now == 0 ? side[k] : now;
            } else if (side[k] == 0) {
                side[k] = now;
            } else if (value * side[k] <= 0) {
                side[k] = -side[k];
                if (functions[k].direction().watches(side[k] > 0)) {
                    return k;
                }
            }
        }
        return -1;
    }

    /** Locates the crossings between two times of a step; afterwards {@link #first} names them one by one. */
    void locate(StepInterpolant step, double from, double to) {
        solution = step;
        step.stateAt(to, state);
        for (int k = 0; k < functions.length; k++) {
            atEnd[k] = valueAt(functions[k], to, state);
            crossing[k] = side[k] != 0 && atEnd[k] * side[k] <= 0 ? to : Double.NaN;
            side[k] = side[k] != 0 ? side[k] : (int) Math.signum(atEnd[k]);
        }
        for (int k = 0; k < functions.length; k++) {
            // A crossing in a direction that nobody watches need not be located.
            if (!Double.isNaN(crossing[k]) && functions[k].direction().watches(side[k] < 0)) {
                crossing[k] = locateOne(k, from, to);
            }
            latest[k] = atEnd[k];
        }
    }

    private double locateOne(int k, double from, double to) {
        if (latest[k] * side[k] <= 0) {
            return from;
        }
        if (atEnd[k] == 0 || to - from <= tolerance) {
            return to;
        }
        sought = functions[k];
        return Roots.fromAbove(this, from, latest[k], to, atEnd[k], tolerance, "event " + sought.id());
    }

    /** The event with the earliest located crossing that is still waiting, or -1. */
    int first() {
        int earliest = -1;
        for (int k = 0; k < functions.length; k++) {
            if (!Double.isNaN(crossing[k]) && (earliest < 0 || crossing[k] < crossing[earliest])) {
                earliest = k;
            }
        }
        return earliest;
    }

    /** Where the waiting crossing of an event is, s. */
    double crossing(int k) {
        return crossing[k];
    }

    /** Takes the waiting crossing of an event as done. Returns whether its direction is watched. */
    boolean take(int k) {
        crossing[k] = Double.NaN;
        side[k] = -side[k];
        return functions[k].direction().watches(side[k] > 0);
    }

    @Override
    public double applyAsDouble(double t) {
        solution.stateAt(t, state);
        return valueAt(sought, t, state);
    }

    private double valueAt(EventFunction function, double t, double[] y) {
        double value = function.value(system.seen(t), y);
        if (Double.isNaN(value)) {
            throw new ComputationException(
                    Message.of(MessageKey.EVENT_NOT_A_NUMBER, Double.toString(t), Integer.toString(function.id())));
        }
        return value;
    }
}
