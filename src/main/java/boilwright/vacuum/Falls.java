package boilwright.vacuum;

import boilwright.numerics.EventAction;
import boilwright.numerics.EventDirection;
import boilwright.numerics.EventFunction;

/** Stops a run when the chamber's pressure has fallen to a value. */
record Falls(double logPressure) implements EventFunction {
    @Override
    public int id() {
        return 0;
    }

    @Override
    public EventDirection direction() {
        return EventDirection.FALLING;
    }

    @Override
    public double value(double t, double[] y) {
        return y[ChamberSystem.LOG_PRESSURE] - logPressure;
    }

    @Override
    public EventAction occurred(double t, double[] y, boolean rising) {
        return EventAction.STOP;
    }
}
