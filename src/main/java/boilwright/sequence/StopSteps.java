package boilwright.sequence;

import boilwright.answers.Cautions;
import boilwright.answers.Say;
import boilwright.rig.SourceKind;
import boilwright.thermal.EventKind;
import java.util.Optional;
import java.util.OptionalDouble;

/** The steps from hot to cold, at the times of the cool-down. */
final class StopSteps {
    private final StepList list;
    private final SimulatedRun run;
    private final PumpSetup setup;

    private StopSteps(StepList list) {
        this.list = list;
        run = list.run();
        setup = list.setup();
    }

    private static Moment at(double seconds) {
        return new Moment(Clock.FROM_HOT, seconds);
    }

    /** The usual stop, until the pump is cold and may be opened. */
    static void addWhole(StepList list) {
        StopSteps steps = new StopSteps(list);
        steps.valve();
        steps.heatOff(false);
        steps.keep();
        steps.jetsGone();
        steps.cold().ifPresent(steps::open);
    }

    /** The shortest way to leave: as the usual stop, and nothing is opened. */
    static void addQuick(StepList list) {
        StopSteps steps = new StopSteps(list);
        steps.valve();
        steps.heatOff(true);
        steps.keep();
        steps.jetsGone();
        steps.cold().ifPresent(steps::leaveShut);
    }

    /** Something is wrong: heat first. */
    static void addEmergency(StepList list) {
        StopSteps steps = new StopSteps(list);
        steps.heatOff(true);
        steps.valve();
        steps.keep();
        steps.jetsGone();
        steps.cold().ifPresent(steps::leaveShut);
    }

    private void valve() {
        if (setup.hasValve()) {
            list.add(
                    Action.CLOSE_VALVE,
                    at(0),
                    list.run().instructions().shutValve().orElseThrow(),
                    "",
                    SequenceText.ELSE_CLOSE_VALVE.say(),
                    SequenceText.WHY_CLOSE_VALVE.say(),
                    "");
        }
    }

    private void heatOff(boolean quick) {
        SourceKind kind = run.rig().heatSource().kind();
        String what = SequenceText.WHAT_HEAT_OFF.say();
        if (setup.isFlame()) {
            what = SequenceText.WHAT_HEAT_OFF_FLAME.say();
        } else if (quick && kind.mounting() == SourceKind.Mounting.TAKEN_AWAY) {
            what = SequenceText.WHAT_HEAT_OFF_PLATE.say("the " + kind.shortTitle());
        }
        list.add(Action.HEAT_OFF, at(0), what, "", "", SequenceText.WHY_HEAT_OFF.say(), "");
    }

    private void keep() {
        list.add(
                Action.KEEP,
                at(0),
                SequenceText.WHAT_KEEP_COOLING.say(),
                "",
                "",
                SequenceText.WHY_KEEP.say(),
                list.cautions(Cautions.Place.OPENING));
    }

    private void jetsGone() {
        run.downS(EventKind.JETS_GONE)
                .ifPresent(t -> list.await(
                        Action.LOOK_JETS_GONE,
                        at(StepList.up(t)),
                        0,
                        SequenceText.WHAT_LOOK_JETS_GONE.say(),
                        SequenceText.HOLD_LOOK_JETS_GONE.say(),
                        SequenceText.ELSE_LOOK_JETS_GONE.say(),
                        SequenceText.WHY_LOOK_JETS_GONE.say()));
    }

    /** Cold enough to leave; empty when that is not within the run. */
    private Optional<Double> cold() {
        OptionalDouble leave = run.downS(EventKind.WATER_MAY_STOP);
        if (leave.isEmpty()) {
            return Optional.empty();
        }
        double t = StepList.up(leave.getAsDouble());
        String below = Say.temperature(run.leaveK());
        list.await(
                Action.LOOK_COLD,
                at(t),
                0,
                SequenceText.WHAT_LOOK_COLD.say(below),
                SequenceText.HOLD_LOOK_COLD.say(below),
                SequenceText.ELSE_LOOK_COLD.say(),
                SequenceText.WHY_LOOK_COLD.say());
        if (setup.isCooled()) {
            list.add(
                    Action.COOLING_OFF,
                    at(t),
                    (setup.isFan() ? SequenceText.WHAT_FAN_OFF : SequenceText.WHAT_COOLING_OFF).say(),
                    "",
                    "",
                    SequenceText.WHY_COOLING_OFF.say(),
                    setup.hasWater() ? list.cautions(Cautions.Place.WATER) : "");
        }
        list.add(
                Action.BACKING_OFF,
                at(t),
                SequenceText.WHAT_BACKING_OFF.say(),
                "",
                "",
                SequenceText.WHY_BACKING_OFF.say(),
                "");
        return Optional.of(t);
    }

    private void leaveShut(double t) {
        boolean known = run.fluid().airAdmissionLimit().isPresent();
        list.add(
                Action.LEAVE_SHUT,
                at(t),
                SequenceText.WHAT_LEAVE_SHUT.say(),
                "",
                "",
                (known ? SequenceText.WHY_LEAVE_SHUT : SequenceText.WHY_LEAVE_SHUT_UNKNOWN).say(),
                "");
    }

    private void open(double leaveS) {
        OptionalDouble air = run.downS(EventKind.AIR_ALLOWED);
        if (air.isEmpty()) {
            leaveShut(leaveS);
            return;
        }
        double t = Math.max(leaveS, StepList.up(air.getAsDouble()));
        list.await(
                Action.LET_AIR_IN,
                at(t),
                0,
                SequenceText.WHAT_LET_AIR_IN.say(),
                SequenceText.HOLD_LET_AIR_IN.say(Say.temperature(run.airK())),
                SequenceText.ELSE_LET_AIR_IN.say(),
                SequenceText.WHY_LET_AIR_IN.say());
        run.downS(EventKind.TOUCH_SAFE)
                .ifPresent(touch -> list.add(
                        Action.OPEN_PUMP,
                        at(Math.max(t, StepList.up(touch))),
                        SequenceText.WHAT_OPEN_PUMP.say(),
                        SequenceText.HOLD_OPEN_PUMP.say(),
                        "",
                        SequenceText.WHY_OPEN_PUMP.say(),
                        ""));
    }
}
