package boilwright.answers;

import boilwright.answers.Margin.Status;
import boilwright.rig.ParameterValues;
import boilwright.rig.Rig;
import boilwright.thermal.EventKind;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.StageState;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** The answer in a few sentences. */
final class Verdict {
    private Verdict() {}

    static String ofCheck(
            Rig rig,
            ParameterValues values,
            SteadyState steady,
            NeededState needed,
            RunResult warmup,
            List<Margin> margins) {
        HeatLimiter limiter = HeatLimiter.of(rig, values, needed);
        StringBuilder text = new StringBuilder(jets(limiter.source(), steady, needed));
        if (needed.heatAvailableW() < needed.heatNeededW() * HeatLimiter.wantedRatio(rig)) {
            text.append(' ').append(limiter.reason());
        }
        OptionalDouble pumping = time(warmup, EventKind.FULL_PUMPING);
        OptionalDouble heatOn = time(warmup, EventKind.HEAT_ON);
        if (pumping.isPresent() && heatOn.isPresent()) {
            text.append(' ')
                    .append(AnswerText.VERDICT_TIME.say(Say.time(pumping.getAsDouble() - heatOn.getAsDouble())));
        }
        text.append(' ').append(summary(margins));
        return text.toString();
    }

    private static String jets(String source, SteadyState steady, NeededState needed) {
        int all = steady.stages().size();
        long lit = steady.stages().stream().filter(StageState::lit).count();
        long full = steady.stages().stream().filter(StageState::full).count();
        String delivered = Say.power(steady.heatDeliveredW());
        String wanted = Say.power(needed.heatNeededW());
        if (full == all) {
            return AnswerText.VERDICT_ALL_FULL.say(source, allJets(all), delivered, wanted);
        } else if (lit == all) {
            return AnswerText.VERDICT_ALL_LIT_NOT_FULL.say(
                    source, Long.toString(full), Integer.toString(all), delivered, wanted);
        } else if (lit > 0) {
            return AnswerText.VERDICT_SOME_LIT.say(
                    source, Long.toString(lit), Integer.toString(all), delivered, wanted);
        }
        return AnswerText.VERDICT_NONE_LIT.say(source, delivered, wanted);
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
            long count =
                    margins.stream().filter(m -> m.status() == Status.FAILS).count();
            return AnswerText.VERDICT_FAILING.say(Long.toString(count), failing);
        }
        String tight = titles(margins, Status.TIGHT);
        return tight.isEmpty()
                ? AnswerText.VERDICT_NO_MARGIN_FAILS.say()
                : AnswerText.VERDICT_NO_MARGIN_FAILS.say() + " " + AnswerText.VERDICT_TIGHT.say(tight);
    }

    private static String titles(List<Margin> margins, Status status) {
        return margins.stream()
                .filter(m -> m.status() == status)
                .map(Margin::title)
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
            long lit = run.events().stream()
                    .filter(e -> e.kind() == EventKind.JET_LIT && e.timeS().isPresent())
                    .count();
            first = AnswerText.VERDICT_WARMUP_NEVER.say(
                    HeatLimiter.name(rig.heatSource()),
                    Long.toString(lit),
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
