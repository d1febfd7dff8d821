package boilwright.answers;

import boilwright.answers.Margin.Status;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The answer in a few sentences. */
final class Verdict {
    private Verdict() {}

    /** Root cause first, what follows from it after that. */
    static String ofCheck(Asked asked, SteadyState steady, NeededState needed, RunResult warmup, List<Margin> margins) {
        HeatLimiter limiter = HeatLimiter.of(asked.rig(), asked.values(), needed);
        boolean full = steady.stages().stream().allMatch(StageState::full);
        List<String> said = new ArrayList<>();
        if (full) {
            said.add(AnswerText.VERDICT_ALL_FULL.say(
                    limiter.source(), allJets(steady.stages().size())));
        } else {
            said.add(rootCause(steady, needed, margins, limiter));
            said.add(counts(steady));
        }
        said.add(AnswerText.VERDICT_HEAT.say(
                Say.power(steady.heatDeliveredW()),
                Say.power(needed.heatAvailableW()),
                Say.power(needed.heatNeededW())));
        if (full && needed.heatAvailableW() < needed.heatNeededW() * HeatLimiter.wantedRatio(asked.rig())) {
            said.add(limiter.reason());
        }
        OptionalDouble pumping = time(warmup, EventKind.FULL_PUMPING);
        OptionalDouble heatOn = time(warmup, EventKind.HEAT_ON);
        if (pumping.isPresent() && heatOn.isPresent()) {
            said.add(AnswerText.VERDICT_TIME.say(Say.time(pumping.getAsDouble() - heatOn.getAsDouble())));
        }
        restAgainstWarmup(steady, warmup).ifPresent(said::add);
        said.add(summary(margins));
        return String.join(" ", said);
    }

    /** Why not every jet of a rig is full: root cause, then how many are. */
    static String whyNotFull(CheckAnswer check) {
        HeatLimiter limiter = HeatLimiter.of(check.rig(), check.parameters(), check.needed());
        return rootCause(check.steady(), check.needed(), check.margins(), limiter) + " " + counts(check.steady());
    }

    private static String counts(SteadyState steady) {
        return AnswerText.VERDICT_NOT_FULL.say(
                Long.toString(steady.stages().stream().filter(StageState::full).count()),
                Integer.toString(steady.stages().size()),
                Long.toString(steady.stages().stream().filter(StageState::lit).count()));
    }

    /** The one thing that keeps the jets from being full; that of the heat before what follows from it. */
    private static String rootCause(SteadyState steady, NeededState needed, List<Margin> margins, HeatLimiter limiter) {
        String left = Say.percent(steady.liquidFraction());
        if (needed.heatAvailableW() < needed.heatNeededW()) {
            return AnswerText.ROOT_HEAT.say(limiter.reason());
        }
        if (fails(margins, MarginId.LIQUID)) {
            return fails(margins, MarginId.OIL_BULK) || fails(margins, MarginId.OIL_LOSS)
                    ? AnswerText.ROOT_TOO_HOT.say(
                            left, Say.power(steady.heatDeliveredW()), Say.power(needed.heatNeededW()))
                    : AnswerText.ROOT_OIL.say(left);
        }
        if (fails(margins, MarginId.FORELINE)) {
            return AnswerText.ROOT_FORELINE.say(
                    Say.pressure(steady.forelinePa()), Say.pressure(steady.criticalBackingPa()));
        }
        if (fails(margins, MarginId.FILM_MARGIN)) {
            return AnswerText.ROOT_COOLING.say();
        }
        if (fails(margins, MarginId.COLUMN_MACH)) {
            return AnswerText.ROOT_COLUMN.say();
        }
        return steady.stages().stream()
                .map(StageState::darkReason)
                .filter(reason -> !reason.isEmpty())
                .findFirst()
                .orElseGet(AnswerText.CURE_JETS::say);
    }

    private static boolean fails(List<Margin> margins, MarginId id) {
        return margins.stream().anyMatch(m -> m.id() == id && m.fails());
    }

    /** Where the time line and the state at rest differ in what is full, why. */
    private static Optional<String> restAgainstWarmup(SteadyState steady, RunResult warmup) {
        List<String> notFull = steady.stages().stream()
                .filter(stage -> !stage.full())
                .map(StageState::name)
                .toList();
        if (notFull.isEmpty()) {
            return time(warmup, EventKind.FULL_PUMPING).isPresent()
                    ? Optional.empty()
                    : Optional.of(AnswerText.VERDICT_FULL_AT_REST_ONLY.say());
        }
        String forAWhile = warmup.events().stream()
                .filter(e -> e.kind() == EventKind.JET_FULL && e.timeS().isPresent())
                .map(TimeEvent::stage)
                .filter(notFull::contains)
                .collect(Collectors.joining(", "));
        return forAWhile.isEmpty()
                ? Optional.empty()
                : Optional.of(AnswerText.VERDICT_FULL_IN_WARMUP_ONLY.say(forAWhile));
    }

    private static String allJets(int count) {
        return switch (count) {
            case 1 -> AnswerText.THE_JET.say();
            case 2 -> AnswerText.BOTH_JETS.say();
            default -> AnswerText.ALL_JETS.say(Integer.toString(count));
        };
    }

    private static String summary(List<Margin> margins) {
        String failing = titles(margins, Status.FAILS);
        if (!failing.isEmpty()) {
            return AnswerText.VERDICT_FAILING.say(failing);
        }
        String tight = titles(margins, Status.TIGHT);
        return tight.isEmpty()
                ? AnswerText.VERDICT_NO_MARGIN_FAILS.say()
                : AnswerText.VERDICT_NO_MARGIN_FAILS.say() + " " + AnswerText.VERDICT_TIGHT.say(tight);
    }

    private static String titles(List<Margin> margins, Status status) {
        return margins.stream()
                .filter(m -> m.status() == status)
                .map(Margin::when)
                .collect(Collectors.joining(", "));
    }

    static String ofWarmup(Rig rig, RunResult run, List<Margin> margins) {
        OptionalDouble pumping = time(run, EventKind.FULL_PUMPING);
        OptionalDouble heatOn = time(run, EventKind.HEAT_ON);
        String first;
        if (pumping.isPresent() && heatOn.isPresent()) {
            first = AnswerText.VERDICT_WARMUP.say(
                    Say.time(heatOn.getAsDouble()),
                    Say.time(pumping.getAsDouble()),
                    Say.time(pumping.getAsDouble() - heatOn.getAsDouble()));
        } else {
            // as in the ledger: what is full at the end, not what was full for a while on the way
            first = AnswerText.VERDICT_WARMUP_NEVER.say(
                    rig.heatSource().title(),
                    Long.toString(RunMargins.fullAtEnd(rig, run)),
                    Integer.toString(rig.stages().size()));
        }
        return first + " " + summary(margins);
    }

    static String ofCooldown(RunResult run) {
        OptionalDouble gone = time(run, EventKind.JETS_GONE);
        OptionalDouble air = time(run, EventKind.AIR_ALLOWED);
        OptionalDouble leave = time(run, EventKind.WATER_MAY_STOP);
        boolean airKnown = run.events().stream()
                .anyMatch(e -> e.kind() == EventKind.AIR_ALLOWED && e.timeS().isPresent());
        if (gone.isEmpty() || leave.isEmpty()) {
            return AnswerText.VERDICT_COOLDOWN_OPEN.say();
        }
        if (run.events().stream().noneMatch(e -> e.kind() == EventKind.JET_LOST)) {
            return AnswerText.VERDICT_COOLDOWN_NOTHING_LIT.say(
                    air.isPresent() ? Say.time(air.getAsDouble()) : "-", Say.time(leave.getAsDouble()));
        }
        return airKnown
                ? AnswerText.VERDICT_COOLDOWN.say(
                        Say.time(gone.getAsDouble()), Say.time(air.getAsDouble()), Say.time(leave.getAsDouble()))
                : AnswerText.VERDICT_COOLDOWN_NO_AIR_LIMIT.say(
                        Say.time(gone.getAsDouble()), Say.time(leave.getAsDouble()));
    }

    static OptionalDouble time(RunResult run, EventKind kind) {
        return run.events().stream()
                .filter(e -> e.kind() == kind)
                .map(TimeEvent::timeS)
                .filter(OptionalDouble::isPresent)
                .findFirst()
                .orElse(OptionalDouble.empty());
    }
}
