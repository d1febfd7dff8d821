package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.Clock;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanLimit;
import boilwright.sequence.PlanStep;
import boilwright.units.Dimension;
import boilwright.units.QuantityWriter;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what is overdue by the plan's own times and which reading is past a limit of the plan. */
final class Alarms {
    private static final String OVERDUE = "overdue";

    private final List<PlanStep> steps;
    private final List<PlanLimit> limits;

    Alarms(PlanAnswer answer) {
        steps = answer.plan().orElseThrow().steps();
        limits = answer.limits();
    }

    /** What tells one alarm from another. */
    static String key(LogEntry alarm) {
        return alarm.quantity().equals(OVERDUE) ? overdueKey(alarm.step()) : alarm.quantity();
    }

    static String overdueKey(int step) {
        return OVERDUE + "-" + step;
    }

    /** Alarms that were not told yet. */
    List<LogEntry> fresh(RunState state, Instant now) {
        List<LogEntry> fresh = new ArrayList<>();
        state.running().ifPresent(clock -> overdue(state, clock, state.clockS(clock, now), now, fresh));
        for (PlanLimit limit : limits) {
            past(limit, state)
                    .filter(reading -> !state.lasts(limit.id()))
                    .ifPresent(reading -> fresh.add(pastLimit(limit, reading, state, now)));
        }
        return fresh;
    }

    /** Strikes from the state what is over; to be called after everything that happens. */
    void settle(RunState state) {
        for (PlanLimit limit : limits) {
            if (past(limit, state).isEmpty()) {
                state.isOver(limit.id());
            }
        }
    }

    private Optional<LogEntry> past(PlanLimit limit, RunState state) {
        return kind(limit.id())
                .flatMap(state::lastReading)
                .filter(reading -> reading.value().orElseThrow() > limit.value() && holds(limit.id(), state));
    }

    private void overdue(RunState state, Clock clock, double nowS, Instant now, List<LogEntry> fresh) {
        for (int i = 0; i < steps.size(); i++) {
            PlanStep step = steps.get(i);
            boolean late = step.moment().clock() == clock
                    && step.latestS().isPresent()
                    && step.latestS().getAsDouble() < nowS
                    && !state.isDone(i + 1);
            if (late && !state.lasts(overdueKey(i + 1))) {
                double latest = step.latestS().getAsDouble();
                String instead = step.words().otherwise();
                String sentence = CompanionText.ALARM_OVERDUE.say(
                        Integer.toString(i + 1),
                        LogHead.PlannedStep.of(step).what(),
                        QuantityWriter.writeAuto(latest, Dimension.TIME),
                        instead);
                fresh.add(LogEntry.of(now, LogKind.ALARM, OVERDUE, sentence.strip())
                        .with(latest, "s")
                        .on(clock, nowS)
                        .ofStep(i + 1));
            }
        }
    }

    private static LogEntry pastLimit(PlanLimit limit, LogEntry reading, RunState state, Instant now) {
        String value = QuantityWriter.writeAuto(reading.value().orElseThrow(), limit.dimension());
        String title =
                ReadingKind.of(reading.quantity()).map(ReadingKind::title).orElseThrow();
        LogEntry alarm = LogEntry.of(
                        now,
                        LogKind.ALARM,
                        limit.id(),
                        CompanionText.ALARM_LIMIT.say(title, value, limit.title(), limit.inWords()))
                .with(limit.value(), limit.dimension().siUnit());
        return state.running()
                .map(clock -> alarm.on(clock, state.clockS(clock, now)))
                .orElse(alarm);
    }

    /** The reading that a limit of a plan is held against. */
    private static Optional<ReadingKind> kind(String limit) {
        return Optional.ofNullable(
                switch (limit) {
                    case "foreline", "foreline-of-jets" -> ReadingKind.FORELINE;
                    case "water-out" -> ReadingKind.WATER_OUT;
                    case "oil", "air", "leave" -> ReadingKind.BOILER;
                    case "crossover" -> ReadingKind.CHAMBER;
                    // a sudden difference on glass is no single reading
                    default -> null;
                });
    }

    /** Whether the limit counts at this point of the run. */
    private boolean holds(String limit, RunState state) {
        boolean hot = state.runs(Clock.FROM_HOT);
        boolean heated = (hot || did(Action.HEAT, state)) && !offByNow(state);
        boolean jets = hot
                || did(Action.LOOK_FIRST_JET, state)
                || did(Action.LOOK_TOP_JET, state)
                || did(Action.LOOK_FULL, state);
        return switch (limit) {
            case "foreline" -> heated;
            case "foreline-of-jets" -> jets && !did(Action.LOOK_JETS_GONE, state);
            case "air" -> did(Action.LET_AIR_IN, state);
            case "leave" -> did(Action.COOLING_OFF, state) || did(Action.BACKING_OFF, state);
            case "crossover" -> did(Action.OPEN_VALVE, state) && !did(Action.CLOSE_VALVE, state);
            default -> true;
        };
    }

    /** Whether the heat was turned off for good: in a stop, not between levels of a start. */
    private boolean offByNow(RunState state) {
        return done(Action.HEAT_OFF, Clock.FROM_HOT, state);
    }

    private boolean done(Action action, Clock clock, RunState state) {
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).action() == action && steps.get(i).moment().clock() == clock && state.isDone(i + 1)) {
                return true;
            }
        }
        return false;
    }

    private boolean did(Action action, RunState state) {
        return done(action, Clock.FROM_COLD, state) || done(action, Clock.FROM_HOT, state);
    }
}
