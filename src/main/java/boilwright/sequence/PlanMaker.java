package boilwright.sequence;

import boilwright.answers.Cautions;
import boilwright.answers.CheckAnswer;
import boilwright.answers.Say;
import boilwright.thermal.EventKind;
import boilwright.vacuum.Crossover;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the plan of a variant for a run, or says why there can be none. */
final class PlanMaker {
    private static final double MINUTE_S = 60;

    private PlanMaker() {}

    /** How long the cold rig must wait before the warm-up's time 0 so that the backing pump runs long enough, s: whole minutes. */
    static double gapS(SimulatedRun run, boolean fresh) {
        double least = fresh ? Rule.BACKING_LONG_S : PumpSetup.of(run.rig()).backingLeastS();
        double heat = run.pumpDownS() + run.rig().schedule().heatOnS();
        return Math.max(0, Math.ceil((least - heat) / MINUTE_S) * MINUTE_S);
    }

    /** Why no plan of this variant can be made, as far as that is known before it is held against the rules. */
    static Optional<String> obstacle(Variant variant, SimulatedRun run) {
        CheckAnswer check = run.check();
        if (variant == Variant.QUICK_STOP || variant == Variant.EMERGENCY) {
            return Optional.empty();
        }
        boolean pumps = variant == Variant.STANDBY
                ? run.allFullAtRest()
                : run.allFullAtRest() && run.upS(EventKind.FULL_PUMPING, "").isPresent();
        if (!pumps) {
            return Optional.of(SequenceText.NONE_JETS.say(check.verdict()));
        }
        Optional<Crossover> crossover = run.vacuum().map(v -> v.timeline().crossover());
        if (crossover.isPresent()
                && crossover.get().aroundPump()
                && crossover.get().timeS().isEmpty()) {
            return Optional.of(
                    SequenceText.NONE_CROSSOVER.say(run.vacuum().get().crossover()));
        }
        if (variant != Variant.STANDBY && run.downS(EventKind.WATER_MAY_STOP).isEmpty()) {
            return Optional.of(SequenceText.NONE_COLD.say());
        }
        return Optional.empty();
    }

    /** The plan; there must be no obstacle. */
    static Plan make(Variant variant, SimulatedRun run) {
        StepList list = new StepList(run);
        switch (variant) {
            case FIRST, NORMAL -> {
                StartSteps.add(list, variant == Variant.FIRST);
                StopSteps.addWhole(list);
            }
            case STANDBY -> pause(list);
            case QUICK_STOP -> StopSteps.addQuick(list);
            case EMERGENCY -> StopSteps.addEmergency(list);
        }
        return new Plan(variant, list.steps());
    }

    /** What a safe plan comes to, in a sentence, and what of it was tested. */
    static String verdict(Variant variant, SimulatedRun run, List<RuleFinding> findings) {
        String tested = PlanChecker.tested(findings);
        if (variant == Variant.STANDBY) {
            return (PumpSetup.of(run.rig()).isRoughedApart()
                            ? SequenceText.VERDICT_STANDBY
                            : SequenceText.VERDICT_STANDBY_OPEN)
                    .say(tested);
        }
        OptionalDouble leave = run.downS(EventKind.WATER_MAY_STOP);
        if (variant.isFromHot()) {
            return leave.isPresent()
                    ? SequenceText.VERDICT_STOP.say(
                            Say.time(run.downS(EventKind.JETS_GONE).orElse(0)), Say.time(leave.getAsDouble()), tested)
                    : SequenceText.VERDICT_STOP_OPEN.say(tested);
        }
        return SequenceText.VERDICT_PLAN.say(
                (variant == Variant.FIRST ? SequenceText.VERDICT_FIRST : SequenceText.VERDICT_NORMAL).say(),
                Say.time(run.upS(EventKind.HEAT_ON, "").orElseThrow()),
                Say.time(run.upS(EventKind.FULL_PUMPING, "").orElseThrow()),
                Say.time(leave.orElseThrow()),
                tested);
    }

    /** Time for work in the open chamber, s: an example, for the clock has to begin somewhere. */
    private static final double WORK_S = 600;

    static void pause(StepList list) {
        SimulatedRun run = list.run();
        Moment start = new Moment(Clock.FROM_HOT, 0);
        boolean opens = list.setup().isRoughedApart();
        if (opens) {
            list.add(
                    Action.CLOSE_VALVE,
                    start,
                    list.run().instructions().shutValve().orElseThrow(),
                    "",
                    SequenceText.ELSE_CLOSE_VALVE.say(),
                    SequenceText.WHY_CLOSE_VALVE.say(),
                    "");
        }
        String bears = Say.pressure(
                Math.min(list.setup().forelineLimitPa(), run.check().steady().criticalBackingPa()));
        list.add(
                Action.KEEP,
                start,
                SequenceText.WHAT_KEEP.say(),
                "",
                SequenceText.ELSE_KEEP.say(bears),
                SequenceText.WHY_KEEP.say(),
                list.cautions(Cautions.Place.HEAT));
        if (opens) {
            list.add(
                    Action.VENT_CHAMBER,
                    start,
                    SequenceText.WHAT_VENT_CHAMBER.say(),
                    "",
                    "",
                    SequenceText.WHY_VENT_CHAMBER.say(),
                    list.cautions(Cautions.Place.OPENING));
            Moment back = new Moment(Clock.FROM_HOT, WORK_S);
            double opened = StartSteps.handOver(list, back, new Moment(Clock.FROM_HOT, 2 * WORK_S));
            StartSteps.run(list, new Moment(Clock.FROM_HOT, opened));
        } else {
            StartSteps.run(list, start);
        }
    }
}
