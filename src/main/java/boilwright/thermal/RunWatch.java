package boilwright.thermal;

import boilwright.numerics.EventFunction;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** One watched quantity of a run and the times at which it changed sign. */
final class RunWatch implements EventFunction {
    /** A crossing counts when it holds this long, s. */
    static final double HOLD_S = 5;

    /** The quantity. */
    interface Value {
        double of(double t, double[] y);
    }

    /** What to do at a crossing. */
    interface Reaction {
        EventFunction.Action at(double t, double[] y, boolean rising);
    }

    private final int id;
    private final WatchKind kind;
    private final String part;
    private final EventFunction.Direction direction;
    private final Value value;
    private final Reaction reaction;
    private final List<Double> times = new ArrayList<>();
    private final List<Boolean> rises = new ArrayList<>();

    RunWatch(int id, WatchKind kind, String part, EventFunction.Direction direction, Value value, Reaction reaction) {
        this.id = id;
        this.kind = kind;
        this.part = part;
        this.direction = direction;
        this.value = value;
        this.reaction = reaction;
    }

    WatchKind kind() {
        return kind;
    }

    /** The stage or the limit it belongs to; empty for the whole pump. */
    String part() {
        return part;
    }

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
        return value.of(t, y);
    }

    @Override
    public EventFunction.Action occurred(double t, double[] y, boolean rising) {
        times.add(t);
        rises.add(rising);
        return reaction.at(t, y, rising);
    }

    /** First time it went up (or down) and stayed there for the holding time or to the end. */
    OptionalDouble first(boolean rising) {
        for (int i = 0; i < times.size(); i++) {
            if (rises.get(i) == rising && holds(i)) {
                return OptionalDouble.of(times.get(i));
            }
        }
        return OptionalDouble.empty();
    }

    private boolean holds(int i) {
        return i + 1 >= times.size() || times.get(i + 1) - times.get(i) >= HOLD_S;
    }
}
