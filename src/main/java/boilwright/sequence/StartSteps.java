package boilwright.sequence;

import boilwright.answers.Cautions;
import boilwright.answers.Say;
import boilwright.rig.Schedule;
import boilwright.thermal.EventKind;
import boilwright.vacuum.Crossover;
import boilwright.vacuum.PumpDown;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/** The steps from cold to pumping, at the times of the warm-up. */
final class StartSteps {
    private final StepList list;
    private final SimulatedRun run;
    private final PumpSetup setup;
    private final boolean fresh;

    private StartSteps(StepList list, boolean fresh) {
        this.list = list;
        this.fresh = fresh;
        run = list.run();
        setup = list.setup();
    }

    /** Adds them to a list; every jet must become full in the run. */
    static void add(StepList list, boolean fresh) {
        StartSteps steps = new StartSteps(list, fresh);
        steps.cold();
        steps.warming();
        steps.pumping();
        // looks and heat come in the order of their times, whichever jet lights first
        list.steps().sort(Comparator.comparingDouble(s -> s.moment().atS()));
    }

    private static Moment at(double seconds) {
        return new Moment(Clock.FROM_COLD, seconds);
    }

    private void cold() {
        Moment start = at(0);
        if (fresh) {
            String volume = Say.volume(run.rig().chargeM3());
            list.add(
                    Action.FILL,
                    start,
                    SequenceText.WHAT_FILL.say(volume, run.fluid().title()),
                    "",
                    "",
                    SequenceText.WHY_FILL.say(),
                    list.cautions(Cautions.Place.ANYWHERE));
        }
        if (setup.isFlame()) {
            list.add(
                    Action.AIR_ROOM,
                    start,
                    SequenceText.WHAT_AIR_ROOM.say(),
                    "",
                    "",
                    SequenceText.WHY_AIR_ROOM.say(),
                    "");
        }
        backing(start);
        if (setup.hasWater()) {
            list.add(
                    Action.OPEN_OUTLET,
                    start,
                    SequenceText.WHAT_OPEN_OUTLET.say(),
                    "",
                    "",
                    SequenceText.WHY_OPEN_OUTLET.say(),
                    list.cautions(Cautions.Place.WATER));
        }
        cooling(start);
        String limit = Say.pressure(setup.forelineLimitPa());
        double heatS = heatOnS();
        list.await(
                Action.LOOK_FORELINE,
                at(heatS),
                0,
                (setup.readsForeline() ? SequenceText.WHAT_LOOK_FORELINE : SequenceText.WHAT_LOOK_FORELINE_BLIND).say(),
                setup.readsForeline()
                        ? SequenceText.HOLD_LOOK_FORELINE.say(limit, Say.pressure(run.forelineUpPa(heatS)))
                        : SequenceText.HOLD_LOOK_FORELINE_BLIND.say(),
                SequenceText.ELSE_LOOK_FORELINE.say(),
                SequenceText.WHY_LOOK_FORELINE.say());
    }

    private void backing(Moment start) {
        boolean through = !setup.isRoughedApart();
        double roughing = run.pumpDownS();
        double late = Math.max(120, 1.5 * roughing);
        list.add(
                Action.BACKING_ON,
                start,
                HeatLevel.OFF,
                OptionalDouble.of(late),
                (through ? SequenceText.WHAT_BACKING_ON_THROUGH : SequenceText.WHAT_BACKING_ON).say(),
                through && roughing > 0
                        ? SequenceText.HOLD_BACKING_ON_THROUGH.say(
                                Say.pressure(chamberDownPa()), Say.time(StepList.up(roughing)))
                        : SequenceText.HOLD_BACKING_ON.say(),
                SequenceText.ELSE_BACKING_ON.say(),
                SequenceText.WHY_BACKING_ON.say(),
                "");
    }

    /** Chamber pressure when the foreline is down, Pa. */
    private double chamberDownPa() {
        var line = run.vacuum().orElseThrow().timeline();
        return Readings.at(line.timeS(), line.chamberPa(), 0);
    }

    private void cooling(Moment start) {
        if (!setup.isCooled()) {
            return;
        }
        String what = setup.isFan()
                ? SequenceText.WHAT_FAN_ON.say()
                : SequenceText.WHAT_COOLING_ON.say(
                        setup.coolingInWords(run),
                        Say.temperature(run.rig().cooling().inletTemperatureK()));
        list.add(
                Action.COOLING_ON,
                start,
                HeatLevel.OFF,
                OptionalDouble.of(120),
                what,
                setup.isFan() ? "" : SequenceText.HOLD_COOLING_ON.say(),
                setup.isFan() ? "" : SequenceText.ELSE_COOLING_ON.say(),
                SequenceText.WHY_COOLING_ON.say(),
                "");
    }

    private double heatOnS() {
        return run.upS(EventKind.HEAT_ON, "").orElseThrow();
    }

    private void warming() {
        boolean first = true;
        HeatLevel before = HeatLevel.OFF;
        for (Schedule.Step level : run.rig().schedule().steps()) {
            HeatLevel next = HeatLevel.of(level);
            if (!next.equals(before)) {
                heat(next, at(run.zeroS() + level.atS()), first);
                first = first && !next.isOn();
            }
            before = next;
        }
        double from = heatOnS();
        looks(from);
    }

    private void heat(HeatLevel level, Moment when, boolean first) {
        if (!level.isOn()) {
            list.add(
                    Action.HEAT_OFF,
                    when,
                    SequenceText.WHAT_HEAT_OFF.say(),
                    "",
                    "",
                    SequenceText.WHY_HEAT_LEVEL.say(),
                    "");
            return;
        }
        double watts = level.fraction() * run.rig().heatSource().ratedPowerW();
        String why = first
                ? fresh
                        ? SequenceText.WHY_HEAT_GENTLE.say(Say.percent(level.fraction()) + " %")
                        : SequenceText.WHY_HEAT.say()
                : SequenceText.WHY_HEAT_LEVEL.say();
        list.add(
                Action.HEAT,
                when,
                level,
                OptionalDouble.empty(),
                level.holdOilK().isPresent()
                        ? SequenceText.WHAT_HEAT_HOLD.say(
                                Say.temperature(level.holdOilK().getAsDouble()))
                        : SequenceText.WHAT_HEAT.say(Say.percent(level.fraction()) + " %", Say.power(watts)),
                "",
                "",
                why,
                first ? list.cautions(Cautions.Place.HEAT) : "");
    }

    private void looks(double from) {
        String base = Say.pressure(run.forelineAtRestPa());
        run.upS(EventKind.DEGASSED, "")
                .ifPresent(t -> list.await(
                        Action.LOOK_DEGASSED,
                        at(StepList.up(t)),
                        Math.min(from, t),
                        SequenceText.WHAT_LOOK_DEGASSED.say(),
                        SequenceText.HOLD_LOOK_DEGASSED.say(base),
                        SequenceText.ELSE_LOOK_DEGASSED.say(),
                        SequenceText.WHY_LOOK_DEGASSED.say()));
        int top = run.rig().stages().size() - 1;
        if (top > 0) {
            String lowest = run.rig().stages().get(0).name();
            run.upS(EventKind.JET_LIT, lowest)
                    .ifPresent(t -> list.await(
                            Action.LOOK_FIRST_JET,
                            at(StepList.up(t)),
                            from,
                            SequenceText.WHAT_LOOK_FIRST_JET.say(lowest),
                            SequenceText.HOLD_LOOK_FIRST_JET.say(),
                            SequenceText.ELSE_LOOK_FIRST_JET.say(),
                            SequenceText.WHY_LOOK_FIRST_JET.say()));
        }
        String name = run.rig().stages().get(top).name();
        boolean seen = run.rig().body().material().isGlass();
        run.upS(EventKind.JET_LIT, name)
                .ifPresent(t -> list.await(
                        Action.LOOK_TOP_JET,
                        at(StepList.up(t)),
                        from,
                        SequenceText.WHAT_LOOK_TOP_JET.say(name),
                        (seen ? SequenceText.HOLD_LOOK_TOP_JET_GLASS : SequenceText.HOLD_LOOK_TOP_JET_METAL).say(),
                        SequenceText.ELSE_LOOK_TOP_JET.say(),
                        SequenceText.WHY_LOOK_TOP_JET.say()));
        double full = run.upS(EventKind.FULL_PUMPING, "").orElseThrow();
        String oil = Say.temperature(run.oilUpK(full));
        OptionalDouble out = run.check().steady().waterOutK();
        list.await(
                Action.LOOK_FULL,
                at(StepList.up(full)),
                from,
                SequenceText.WHAT_LOOK_FULL.say(),
                out.isPresent()
                        ? SequenceText.HOLD_LOOK_FULL.say(oil, Say.temperature(run.waterOutUpK(full)))
                        : SequenceText.HOLD_LOOK_FULL_DRY.say(oil),
                SequenceText.ELSE_LOOK_FULL.say(),
                SequenceText.WHY_LOOK_FULL.say());
    }

    private void pumping() {
        double ready = StepList.up(run.upS(EventKind.FULL_PUMPING, "").orElseThrow());
        if (setup.isRoughedApart()) {
            ready = handOver(list, at(ready), at(ready));
        }
        run(list, at(ready));
    }

    /**
     * Roughing and opening, one after the other.
     *
     * @param rough when roughing begins
     * @param open when the valve is opened where the roughing time is not known
     * @return when the valve is open, s
     */
    static double handOver(StepList list, Moment rough, Moment open) {
        SimulatedRun run = list.run();
        Optional<Crossover> crossover = run.vacuum().map(v -> v.timeline().crossover());
        String bears = Say.pressure(run.check().steady().criticalBackingPa());
        list.add(
                Action.ROUGH_CHAMBER,
                rough,
                SequenceText.WHAT_ROUGH_CHAMBER.say(),
                "",
                SequenceText.ELSE_ROUGH_CHAMBER.say(bears),
                SequenceText.WHY_ROUGH_CHAMBER.say(),
                "");
        double opened =
                crossover.map(c -> rough.atS() + StepList.up(c.roughingS())).orElse(open.atS());
        double allowed = crossover.map(Crossover::allowedPa).orElse(PumpDown.HIGHEST_CROSSOVER_PA);
        list.await(
                Action.OPEN_VALVE,
                new Moment(rough.clock(), opened),
                rough.atS(),
                SequenceText.WHAT_OPEN_VALVE.say(),
                SequenceText.HOLD_OPEN_VALVE.say(Say.pressure(allowed)),
                SequenceText.ELSE_OPEN_VALVE.say(),
                crossover
                        .map(c -> SequenceText.WHY_OPEN_VALVE.say(Say.time(c.overloadS())))
                        .orElseGet(SequenceText.WHY_OPEN_VALVE_PLAIN::say));
        return opened;
    }

    /** The pump at work. */
    static void run(StepList list, Moment when) {
        SimulatedRun run = list.run();
        String bears = Say.pressure(
                Math.min(list.setup().forelineLimitPa(), run.check().steady().criticalBackingPa()));
        String oil = Say.temperature(run.check().steady().liquidTemperatureK());
        list.add(
                Action.RUN,
                when,
                SequenceText.WHAT_RUN.say(),
                list.setup().hasWater()
                        ? SequenceText.HOLD_RUN.say(Say.temperature(list.setup().waterOutLimitK()), bears, oil)
                        : SequenceText.HOLD_RUN_DRY.say(bears, oil),
                SequenceText.ELSE_RUN.say(bears),
                SequenceText.WHY_RUN.say(),
                "");
    }
}
