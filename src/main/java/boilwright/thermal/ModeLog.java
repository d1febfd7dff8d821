package boilwright.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** When a discrete mode switched on and off. */
final class ModeLog {
    private final List<Double> times = new ArrayList<>();
    private final List<Boolean> states = new ArrayList<>();

    void note(double t, boolean on) {
        int last = times.size() - 1;
        if (last >= 0 && states.get(last) == on) {
            return;
        }
        times.add(t);
        states.add(on);
    }

    /** First change to this state that held for {@link RunWatch#HOLD_S} or to the end. */
    OptionalDouble first(boolean on) {
        for (int i = 0; i < times.size(); i++) {
            if (states.get(i) == on && holds(i)) {
                return OptionalDouble.of(times.get(i));
            }
        }
        return OptionalDouble.empty();
    }

    /** Whether it was on at the start, or came on and held. */
    boolean wasOn() {
        return (!states.isEmpty() && states.get(0)) || first(true).isPresent();
    }

    /** Last change to on that held. */
    OptionalDouble lastOn() {
        for (int i = times.size() - 1; i >= 0; i--) {
            if (states.get(i) && holds(i)) {
                return OptionalDouble.of(times.get(i));
            }
        }
        return OptionalDouble.empty();
    }

    /** Last change to off that held to the end; empty when it is on at the end or never was. */
    OptionalDouble lastOff() {
        int last = times.size() - 1;
        return last > 0 && !states.get(last) ? OptionalDouble.of(times.get(last)) : OptionalDouble.empty();
    }

    private boolean holds(int i) {
        return i + 1 >= times.size() || times.get(i + 1) - times.get(i) >= RunWatch.HOLD_S;
    }
}
