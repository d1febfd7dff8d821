package boilwright.thermal;

import boilwright.numerics.EventFunction;
import boilwright.rig.TypicalValues;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Everything that is watched during a run: the switching of discrete modes and the crossings people want to know of. */
final class RunWatches {
    private static final double DEGASSED = 0.05;
    private static final double FRONT_SHARE = 0.9;

    private static final double FUEL_EMPTY_KG = 1e-6;

    private final PumpModel model;
    private final double[] start;
    private final List<RunWatch> watches = new ArrayList<>();
    private final ModeLog[] lit;
    private final ModeLog[] full;
    private final ModeLog allFull = new ModeLog();

    RunWatches(PumpModel model, double[] start, boolean cooling) {
        this.model = model;
        this.start = start;
        int stages = model.jets.stages;
        lit = new ModeLog[stages];
        full = new ModeLog[stages];
        for (int k = 0; k < stages; k++) {
            lit[k] = new ModeLog();
            full[k] = new ModeLog();
            modes(k);
        }
        source();
        crossings(cooling);
    }

    private void modes(int k) {
        String stage = stage(k);
        add(
                WatchKind.LIT_MODE,
                stage,
                EventFunction.Direction.RISING,
                (t, y) -> {
                    model.solveFlows(y);
                    return model.jets.litExcess(k, model.column, model.walls);
                },
                (t, y, rising) -> {
                    model.jets.toggleLit(k);
                    changed(t);
                    return EventFunction.Action.RESTART;
                });
        add(
                WatchKind.FULL_MODE,
                stage,
                EventFunction.Direction.RISING,
                (t, y) -> {
                    model.solveFlows(y);
                    return model.jets.fullExcess(k);
                },
                (t, y, rising) -> {
                    model.jets.toggleFull(k);
                    changed(t);
                    return EventFunction.Action.RESTART;
                });
    }

    private void source() {
        int at = model.layout.source;
        if (model.source.thermostatExcess(model.coldState(), at) != -1) {
            add(
                    WatchKind.THERMOSTAT,
                    "",
                    EventFunction.Direction.RISING,
                    (t, y) -> model.source.thermostatExcess(y, at),
                    (t, y, rising) -> {
                        model.source.setHeaterOn(!model.source.isHeaterOn());
                        return EventFunction.Action.RESTART;
                    });
        }
        if (model.supply.switches()) {
            add(
                    WatchKind.CHILLER,
                    "",
                    EventFunction.Direction.RISING,
                    (t, y) -> model.supply.switchExcess(y, model.layout.supply),
                    (t, y, rising) -> {
                        model.supply.toggle();
                        return EventFunction.Action.RESTART;
                    });
        }
        if (model.layout.sourceSize == 2) {
            add(
                    WatchKind.CARTRIDGE_HOT,
                    "",
                    EventFunction.Direction.RISING,
                    (t, y) -> y[at] - RunLimits.CARTRIDGE_K,
                    (t, y, rising) -> EventFunction.Action.STOP);
            add(
                    WatchKind.FUEL_EMPTY,
                    "",
                    EventFunction.Direction.FALLING,
                    (t, y) -> y[at + 1] - FUEL_EMPTY_KG,
                    (t, y, rising) -> {
                        model.source.setFuelEmpty(true);
                        return EventFunction.Action.RESTART;
                    });
        }
    }

    private void crossings(boolean cooling) {
        int oil = model.layout.oil;
        note(WatchKind.DEGASSED, "", (t, y) -> DEGASSED - y[model.layout.gas]);
        note(WatchKind.FIRST_VAPOUR, "", (t, y) -> model.fluid.vapourPressure(y[oil]) / model.forelinePa(y) - 1);
        for (int k = 0; k < model.jets.stages; k++) {
            int cell = model.geometry.nozzleCell[k];
            int at = model.layout.column + cell;
            note(WatchKind.FRONT_AT_STAGE, stage(k), (t, y) -> {
                model.solveFlows(y);
                return y[at] - start[at] - FRONT_SHARE * (model.column.cellSaturationK[cell] - start[at]);
            });
        }
        RunLimits.watch(model, this);
        double wild = RunLimits.wildOilK(model.fluid);
        double dry = RunLimits.LEAST_CHARGE * model.chargeKg;
        add(
                WatchKind.DRY,
                "",
                EventFunction.Direction.FALLING,
                (t, y) -> y[model.layout.oilMass] - dry,
                (t, y, rising) -> EventFunction.Action.STOP);
        add(
                WatchKind.WILD,
                "",
                EventFunction.Direction.RISING,
                (t, y) -> y[oil] - wild,
                (t, y, rising) -> EventFunction.Action.STOP);
        if (cooling) {
            model.fluid
                    .airAdmissionLimit()
                    .ifPresent(limit -> note(WatchKind.AIR_ALLOWED, "", (t, y) -> limit - y[oil]));
            note(WatchKind.TOUCH_SAFE, "", (t, y) -> -model.faces.touchExcessK(y));
            note(WatchKind.WATER_MAY_STOP, "", (t, y) -> -leaveExcessK(model, y));
        }
    }

    /** How far the oil is above the temperature at which water and backing pump may stop and no vapour is left, K. */
    static double leaveExcessK(PumpModel model, double[] y) {
        double still = model.fluid.saturationTemperature(model.forelinePa(y));
        return y[model.layout.oil] - Math.min(TypicalValues.LEAVE_OIL_K, still);
    }

    void note(WatchKind kind, String part, RunWatch.Value value) {
        add(kind, part, EventFunction.Direction.BOTH, value, (t, y, rising) -> EventFunction.Action.CONTINUE);
    }

    void add(
            WatchKind kind,
            String part,
            EventFunction.Direction direction,
            RunWatch.Value value,
            RunWatch.Reaction reaction) {
        watches.add(new RunWatch(watches.size(), kind, part, direction, value, reaction));
    }

    private void changed(double t) {
        model.modesChanged();
        for (int k = 0; k < model.jets.stages; k++) {
            lit[k].note(t, model.jets.isLit(k));
            full[k].note(t, model.jets.isFull(k));
        }
        allFull.note(t, model.jets.allFull());
    }

    /** Takes the modes of the starting state down. */
    void settleAtStart(double[] y) {
        model.solveFlows(y);
        changed(0);
    }

    List<RunWatch> all() {
        return watches;
    }

    String stage(int k) {
        return model.rig.stages().get(k).name();
    }

    ModeLog lit(int k) {
        return lit[k];
    }

    ModeLog full(int k) {
        return full[k];
    }

    ModeLog allFull() {
        return allFull;
    }

    /** First crossing of a watched quantity that held. */
    OptionalDouble first(WatchKind kind, String part, boolean rising) {
        return watches.stream()
                .filter(w -> w.kind() == kind && w.part().equals(part))
                .map(w -> w.first(rising))
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }

    /** When a discrete mode switched on and off. */
    static final class ModeLog {
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
}
