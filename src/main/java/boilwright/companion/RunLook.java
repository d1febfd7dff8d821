package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanStep;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a run stands at a moment, from its state and its plan. */
final class RunLook {
    /** Differences that nobody notes, s. */
    private static final double SAME_S = 0.5;

    private final List<PlanStep> steps;
    private final ComputedRun computed;
    private final RunState state;

    RunLook(PlanAnswer answer, RunState state) {
        steps = answer.plan().orElseThrow().steps();
        computed = new ComputedRun(answer);
        this.state = state;
    }

    /** The step to do now: the first of the clock that counts that was not done, then that of the stop. */
    Optional<Integer> current() {
        boolean stopping = state.runs(Clock.FROM_HOT);
        for (int i = 0; i < steps.size(); i++) {
            boolean past = stopping && steps.get(i).moment().clock() == Clock.FROM_COLD;
            if (!past && !state.isDone(i + 1)) {
                return Optional.of(i + 1);
            }
        }
        return Optional.empty();
    }

    /** How many steps of a clock were done. */
    int doneOn(Clock clock) {
        int done = 0;
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).moment().clock() == clock && state.isDone(i + 1)) {
                done++;
            }
        }
        return done;
    }

    boolean calls() {
        return state.alarms().containsValue(false);
    }

    /** When the heat was switched on a clock, s; empty when it was not. */
    private OptionalDouble switchedS(Clock clock) {
        Action action = clock == Clock.FROM_COLD ? Action.HEAT : Action.HEAT_OFF;
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            if (step.action() == action && step.moment().clock() == clock) {
                return state.doneS(i + 1, clock);
            }
        }
        return OptionalDouble.empty();
    }

    private OptionalDouble planSwitchS(Clock clock) {
        return clock == Clock.FROM_COLD ? computed.heatS() : computed.moment(Action.HEAT_OFF, Clock.FROM_HOT);
    }

    /** The computed time that corresponds to a time on a clock, s. */
    private double planTimeS(Clock clock, double seconds) {
        OptionalDouble plan = planSwitchS(clock);
        if (plan.isEmpty()) {
            return seconds;
        }
        OptionalDouble real = switchedS(clock);
        boolean switched = real.isPresent() && seconds >= real.getAsDouble();
        // heat that is late: the pump waits, cold or hot as it is
        return switched
                ? seconds - real.getAsDouble() + plan.getAsDouble()
                : Math.min(seconds, plan.getAsDouble() - 1e-3);
    }

    /** What a reading should be now, SI; empty where nothing is computed or no clock runs. */
    OptionalDouble computedNow(ReadingKind kind, Instant now) {
        return state.running()
                .map(clock -> computed.at(kind, clock, planTimeS(clock, state.clockS(clock, now))))
                .orElseGet(OptionalDouble::empty);
    }

    private OptionalDouble computedFor(ReadingKind kind, LogEntry reading) {
        return reading.clock()
                .map(clock -> computed.at(
                        kind, clock, planTimeS(clock, reading.clockS().orElse(0))))
                .orElseGet(OptionalDouble::empty);
    }

    RunView at(Instant now) {
        Optional<Clock> clock = state.running();
        double clockS = clock.map(c -> state.clockS(c, now)).orElse(0.0);
        Optional<Outlook> outlook = clock.map(c -> outlook(c, clockS));
        List<RunView.StepView> views = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            views.add(view(i + 1, clock, clockS, outlook));
        }
        List<RunView.AlarmView> alarms = new ArrayList<>();
        state.alarms().forEach((alarm, seen) -> alarms.add(new RunView.AlarmView(alarm.text(), seen)));
        return new RunView(
                clock,
                clockS,
                views,
                current().map(number -> views.get(number - 1)),
                outlook.map(o -> ahead(o, clockS, views)).orElse(List.of()),
                outlook.map(Outlook::why).orElseGet(CompanionText.OUTLOOK_NO_CLOCK::say),
                readings(),
                alarms,
                state.isEnded());
    }

    private RunView.StepView view(int number, Optional<Clock> clock, double clockS, Optional<Outlook> outlook) {
        PlanStep step = steps.get(number - 1);
        boolean counts = clock.equals(Optional.of(step.moment().clock()));
        boolean done = state.isDone(number);
        OptionalDouble expected = counts && !done && outlook.isPresent()
                ? OptionalDouble.of(outlook.get().expectedS(step.moment().atS()))
                : OptionalDouble.empty();
        boolean due = expected.isPresent() && expected.getAsDouble() <= clockS;
        boolean overdue = counts
                && !done
                && step.latestS().isPresent()
                && clockS > step.latestS().getAsDouble();
        return new RunView.StepView(
                number, step, done, state.doneS(number, step.moment().clock()), expected, due, overdue);
    }

    private List<RunView.ReadingView> readings() {
        List<RunView.ReadingView> views = new ArrayList<>();
        for (LogEntry reading : state.readings()) {
            ReadingKind kind = ReadingKind.of(reading.quantity()).orElseThrow();
            views.add(new RunView.ReadingView(
                    kind,
                    reading.clock(),
                    reading.clockS(),
                    reading.value().orElseThrow(),
                    computedFor(kind, reading)));
        }
        return views;
    }

    private Outlook outlook(Clock clock, double nowS) {
        OptionalDouble planSwitch = planSwitchS(clock);
        if (planSwitch.isEmpty()) {
            return new Outlook(clock, 0, 0, 1, 0, CompanionText.OUTLOOK_NO_STRETCH.say());
        }
        double until = clock == Clock.FROM_COLD
                ? computed.moment(Action.LOOK_FULL, clock).orElse(planSwitch.getAsDouble())
                : Double.MAX_VALUE;
        return Outlook.of(
                clock, planSwitch.getAsDouble(), switchedS(clock), nowS, until, evidence(clock), powerShare(clock));
    }

    private List<Outlook.Evidence> evidence(Clock clock) {
        List<Outlook.Evidence> seen = new ArrayList<>();
        for (Sight sight : Sight.values()) {
            if (sight.clock() != clock) {
                continue;
            }
            for (int i = 0; i < steps.size(); i++) {
                OptionalDouble at = state.doneS(i + 1, clock);
                if (steps.get(i).action() == sight.action() && at.isPresent()) {
                    seen.add(new Outlook.Evidence(
                            at.getAsDouble(), steps.get(i).moment().atS(), sight.title()));
                }
            }
        }
        for (LogEntry reading : state.readings()) {
            if (reading.quantity().equals(ReadingKind.BOILER.id())
                    && reading.clock().equals(Optional.of(clock))) {
                double kelvin = reading.value().orElseThrow();
                OptionalDouble plan =
                        clock == Clock.FROM_COLD ? computed.oilRisesTo(kelvin) : computed.oilFallsTo(kelvin);
                String words = CompanionText.SIGHT_BOILER.say(QuantityWriter.writeAuto(kelvin, Dimension.TEMPERATURE));
                plan.ifPresent(
                        p -> seen.add(new Outlook.Evidence(reading.clockS().orElseThrow(), p, words)));
            }
        }
        return seen;
    }

    /** The last power read with the heat on against the computed one of that moment. */
    private OptionalDouble powerShare(Clock clock) {
        OptionalDouble heat = switchedS(clock);
        Optional<LogEntry> power = state.lastReading(ReadingKind.POWER)
                .filter(r -> r.clock().equals(Optional.of(clock)))
                .filter(r -> heat.isPresent() && r.clockS().orElse(0) >= heat.getAsDouble());
        if (power.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble should = computedFor(ReadingKind.POWER, power.get());
        return should.isPresent() && should.getAsDouble() > 0
                ? OptionalDouble.of(power.get().value().orElseThrow() / should.getAsDouble())
                : OptionalDouble.empty();
    }

    private List<RunView.Ahead> ahead(Outlook outlook, double nowS, List<RunView.StepView> views) {
        List<RunView.Ahead> list = new ArrayList<>();
        for (RunView.StepView view : views) {
            CompanionText words = switch (view.step().action()) {
                case LOOK_TOP_JET -> CompanionText.AHEAD_TOP_JET;
                case LOOK_FULL -> CompanionText.AHEAD_FULL;
                case OPEN_VALVE -> CompanionText.AHEAD_VALVE;
                case LOOK_JETS_GONE -> CompanionText.AHEAD_JETS_GONE;
                case LOOK_COLD -> CompanionText.AHEAD_COLD;
                case LET_AIR_IN -> CompanionText.AHEAD_AIR;
                case OPEN_PUMP -> CompanionText.AHEAD_OPEN;
                default -> null;
            };
            if (words != null && view.step().moment().clock() == outlook.clock()) {
                view.expectedS().ifPresent(t -> list.add(new RunView.Ahead(words.say(), Math.max(0, t - nowS))));
            }
        }
        return list;
    }

    /** A time against the computed one, as a sentence goes on. */
    static String against(double seconds, PlanStep step) {
        double late = seconds - step.moment().atS();
        if (Math.abs(late) < SAME_S) {
            return CompanionText.AS_COMPUTED.say();
        }
        String by = QuantityWriter.writeAuto(Math.rint(Math.abs(late)), Dimension.TIME);
        return (late > 0 ? CompanionText.LATER : CompanionText.EARLIER).say(by);
    }
}
