package boilwright.thermal;

import boilwright.rig.Schedule;
import boilwright.rig.TypicalValues;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Turns what was watched in a run into the events that people read, each with its reason. */
final class RunEvents {
    /** Chamber pressure for crossover before the backing pump is known, Pa. */
    private static final double CROSSOVER_PA = 10;

    private final PumpModel model;
    private final RunWatches watches;
    private final List<Schedule.Step> steps;
    private final boolean cooling;
    private final double endS;
    private final boolean ended;
    private final List<TimeEvent> events = new ArrayList<>();

    RunEvents(
            PumpModel model,
            RunWatches watches,
            List<Schedule.Step> steps,
            boolean cooling,
            double endS,
            boolean ended) {
        this.model = model;
        this.watches = watches;
        this.steps = steps;
        this.cooling = cooling;
        this.endS = endS;
        this.ended = ended;
    }

    /** Events in order of time; those that do not happen come last. */
    List<TimeEvent> list() {
        if (cooling) {
            coolingEvents();
        } else {
            warmingEvents();
        }
        for (String name : RunLimits.NAMES) {
            OptionalDouble t = watches.first(WatchKind.LIMIT, name, true);
            if (t.isPresent()) {
                events.add(new TimeEvent(EventKind.LIMIT_REACHED, "", t, ModelText.LIMIT_PASSED.say(name)));
            }
        }
        endedBy(WatchKind.CARTRIDGE_HOT, true, ModelText.CARTRIDGE_HOT.say(temperature(RunLimits.CARTRIDGE_K)));
        endedBy(WatchKind.DRY, false, ModelText.DRY.say());
        endedBy(WatchKind.WILD, true, ModelText.WILD.say(temperature(RunLimits.wildOilK(model.fluid))));
        if (model.layout.sourceSize == 2 && !cooling) {
            OptionalDouble t = watches.first(WatchKind.FUEL_EMPTY, "", false);
            if (t.isPresent()) {
                events.add(new TimeEvent(EventKind.FUEL_EMPTY, "", t, ModelText.FUEL_EMPTY.say()));
            }
        }
        events.sort(Comparator.comparingDouble(e -> e.timeS().orElse(Double.MAX_VALUE)));
        return events;
    }

    private void endedBy(WatchKind watch, boolean rising, String reason) {
        OptionalDouble t = watches.first(watch, "", rising);
        if (t.isPresent()) {
            events.add(new TimeEvent(EventKind.LIMIT_REACHED, "", t, reason));
        }
    }

    private void warmingEvents() {
        double before = 0;
        for (Schedule.Step step : steps) {
            double level = step.level();
            if (level > 0 && before == 0) {
                events.add(
                        new TimeEvent(EventKind.HEAT_ON, "", OptionalDouble.of(step.atS()), ModelText.HEAT_ON.say()));
            } else if (level == 0 && before > 0) {
                events.add(
                        new TimeEvent(EventKind.HEAT_OFF, "", OptionalDouble.of(step.atS()), ModelText.HEAT_OFF.say()));
            }
            before = level;
        }
        String foreline = pressure(model.forelinePa);
        add(
                EventKind.DEGASSED,
                "",
                first(WatchKind.DEGASSED, ""),
                ModelText.DEGASSED.say(),
                ModelText.DEGASSED_NOT.say());
        add(
                EventKind.FIRST_VAPOUR,
                "",
                first(WatchKind.FIRST_VAPOUR, ""),
                ModelText.FIRST_VAPOUR.say(foreline),
                ModelText.FIRST_VAPOUR_NOT.say(foreline));
        for (int k = 0; k < model.jets.stages; k++) {
            String stage = watches.stage(k);
            add(EventKind.FRONT_AT_STAGE, stage, front(k), ModelText.FRONT.say(stage), ModelText.FRONT_NOT.say(stage));
            add(
                    EventKind.JET_LIT,
                    stage,
                    watches.lit(k).first(true),
                    ModelText.JET_LIT.say(stage),
                    DarkReason.of(model, k));
            add(EventKind.JET_FULL, stage, watches.full(k).first(true), ModelText.JET_FULL.say(stage), notFull(k));
        }
        OptionalDouble pumping = model.jets.allFull() ? watches.allFull().lastOn() : OptionalDouble.empty();
        add(
                EventKind.FULL_PUMPING,
                "",
                pumping,
                ModelText.FULL_PUMPING.say(),
                ModelText.FULL_PUMPING_NOT.say(notFullNames()));
        add(
                EventKind.CROSSOVER_ALLOWED,
                "",
                pumping,
                ModelText.CROSSOVER.say(pressure(CROSSOVER_PA)),
                ModelText.CROSSOVER_NOT.say());
    }

    /** Vapour that lights a jet has arrived there, whether or not the nozzle's wall is as warm as it yet. */
    private OptionalDouble front(int k) {
        OptionalDouble warm = first(WatchKind.FRONT_AT_STAGE, watches.stage(k));
        OptionalDouble lit = watches.lit(k).first(true);
        return warm.isPresent() && lit.isPresent()
                ? OptionalDouble.of(Math.min(warm.getAsDouble(), lit.getAsDouble()))
                : warm.isPresent() ? warm : lit;
    }

    private OptionalDouble first(WatchKind kind, String stage) {
        return watches.first(kind, stage, true);
    }

    private String notFull(int k) {
        return model.jets.isLit(k)
                ? ModelText.JET_FULL_NOT.say(watches.stage(k), Long.toString(Math.round(100 * model.jets.fraction[k])))
                : DarkReason.of(model, k);
    }

    private String notFullNames() {
        List<String> names = new ArrayList<>();
        for (int k = 0; k < model.jets.stages; k++) {
            if (!model.jets.isFull(k)) {
                names.add(watches.stage(k));
            }
        }
        return String.join(", ", names);
    }

    private void coolingEvents() {
        events.add(new TimeEvent(EventKind.HEAT_OFF, "", OptionalDouble.of(0), ModelText.HEAT_OFF.say()));
        OptionalDouble gone = OptionalDouble.of(0);
        for (int k = 0; k < model.jets.stages; k++) {
            if (watches.lit(k).first(true).isEmpty()) {
                continue;
            }
            String stage = watches.stage(k);
            OptionalDouble lost = watches.lit(k).first(false);
            add(EventKind.JET_LOST, stage, lost, ModelText.JET_LOST.say(stage), ModelText.JET_LOST_NOT.say(stage));
            gone = gone.isPresent() && lost.isPresent()
                    ? OptionalDouble.of(Math.max(gone.getAsDouble(), lost.getAsDouble()))
                    : OptionalDouble.empty();
        }
        add(EventKind.JETS_GONE, "", gone, ModelText.JETS_GONE.say(), ModelText.JETS_GONE_NOT.say());
        add(
                EventKind.FLOW_ZERO,
                "",
                already(watches.first(WatchKind.FIRST_VAPOUR, "", false)),
                ModelText.FLOW_ZERO.say(),
                ModelText.FLOW_ZERO_NOT.say());
        OptionalDouble airLimit = model.fluid.airAdmissionLimit();
        add(
                EventKind.AIR_ALLOWED,
                "",
                airLimit.isPresent() ? already(first(WatchKind.AIR_ALLOWED, "")) : airLimit,
                airLimit.isPresent() ? ModelText.AIR_ALLOWED.say(temperature(airLimit.getAsDouble())) : "",
                airLimit.isPresent() ? ModelText.AIR_ALLOWED_NOT.say() : ModelText.AIR_LIMIT_UNKNOWN.say());
        add(
                EventKind.TOUCH_SAFE,
                "",
                already(first(WatchKind.TOUCH_SAFE, "")),
                ModelText.TOUCH_SAFE.say(),
                ModelText.TOUCH_SAFE_NOT.say());
        OptionalDouble leave = already(first(WatchKind.WATER_MAY_STOP, ""));
        String cold =
                temperature(Math.min(TypicalValues.LEAVE_OIL_K, model.fluid.saturationTemperature(model.forelinePa)));
        add(
                EventKind.WATER_MAY_STOP,
                "",
                leave,
                ModelText.WATER_MAY_STOP.say(cold),
                ModelText.WATER_MAY_STOP_NOT.say());
        add(
                EventKind.BACKING_MAY_STOP,
                "",
                leave,
                ModelText.BACKING_MAY_STOP.say(cold),
                ModelText.BACKING_MAY_STOP_NOT.say());
    }

    /** A condition that already held at the start and was never crossed holds from 0 s. */
    private OptionalDouble already(OptionalDouble crossing) {
        return crossing.isPresent() || !ended ? crossing : OptionalDouble.of(0);
    }

    private void add(EventKind kind, String stage, OptionalDouble t, String reason, String otherwise) {
        String brokenOff =
                ended ? "" : " " + ModelText.RUN_BROKEN_OFF.say(QuantityWriter.writeAuto(endS, Dimension.TIME));
        events.add(new TimeEvent(kind, stage, t, t.isPresent() ? reason : otherwise + brokenOff));
    }

    private static String pressure(double pa) {
        return QuantityWriter.writeAuto(pa, Dimension.PRESSURE);
    }

    private static String temperature(double k) {
        return QuantityWriter.writeAuto(k, Dimension.TEMPERATURE);
    }

    static List<TimeEvent> ofDrill(PumpModel model, RunWatches watches, RunSimulator.Script script) {
        List<TimeEvent> events = new ArrayList<>();
        script.happenings()
                .forEach(h -> events.add(
                        new TimeEvent(h.kind(), "", OptionalDouble.of(h.change().atS()), h.sentence())));
        double before = 0;
        for (Schedule.Step step : script.steps()) {
            double level = step.level();
            if (level == 0 && before > 0) {
                events.add(
                        new TimeEvent(EventKind.HEAT_OFF, "", OptionalDouble.of(step.atS()), ModelText.HEAT_OFF.say()));
            }
            before = level;
        }
        for (DrillLimit limit : DrillLimit.values()) {
            OptionalDouble t = watches.first(WatchKind.DRILL_LIMIT, limit.name(), true);
            if (t.isPresent()) {
                events.add(new TimeEvent(EventKind.LIMIT_REACHED, "", t, sentence(limit)));
            }
        }
        for (int k = 0; k < model.jets.stages; k++) {
            String stage = watches.stage(k);
            OptionalDouble lost = watches.lit(k).lastOff();
            if (lost.isPresent()) {
                events.add(new TimeEvent(EventKind.JET_LOST, stage, lost, ModelText.JET_LOST.say(stage)));
            }
        }
        events.sort(Comparator.comparingDouble(e -> e.timeS().orElse(Double.MAX_VALUE)));
        return events;
    }

    private static String sentence(DrillLimit limit) {
        return switch (limit) {
            case FILM -> ModelText.DRILL_FILM.say();
            case CAP -> ModelText.DRILL_CAP.say();
            case WATER_BOILS -> ModelText.DRILL_BOILS.say();
            case COLD_SHOCK -> ModelText.DRILL_SHOCK.say();
            case OIL -> ModelText.DRILL_OIL.say();
            case OIL_LOSS -> ModelText.DRILL_OIL_LOSS.say();
            case FORELINE -> ModelText.DRILL_FORELINE.say();
            case TOUCH -> ModelText.DRILL_TOUCH.say();
        };
    }
}
