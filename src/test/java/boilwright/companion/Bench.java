package boilwright.companion;

import boilwright.sequence.Action;
import boilwright.sequence.PlanAnswer;
import boilwright.sequence.PlanCases;
import boilwright.sequence.Variant;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;

/** A run with a clock that only the test moves. */
final class Bench {
    static final PlanAnswer PLAN = PlanCases.plan(PlanCases.demo("mirror-club"), Variant.NORMAL);

    final List<LogEntry> log = new ArrayList<>();
    final Companion run;
    private Instant now = RunHeads.BEGUN;

    Bench() {
        this(PLAN);
    }

    Bench(PlanAnswer plan) {
        run = new Companion(plan, source(), log::add);
    }

    InstantSource source() {
        return () -> now;
    }

    /** Lets time pass. */
    void pass(double seconds) {
        now = now.plus(Duration.ofMillis(Math.round(seconds * 1000)));
    }

    /** Number of the first step of a kind. */
    int number(Action action) {
        for (int i = 0; i < steps().size(); i++) {
            if (steps().get(i).action() == action) {
                return i + 1;
            }
        }
        throw new AssertionError(action);
    }

    double planS(Action action) {
        return steps().get(number(action) - 1).moment().atS();
    }

    private List<boilwright.sequence.PlanStep> steps() {
        return run.answer().plan().orElseThrow().steps();
    }

    /** From the start of the clock to heat-on, every step done as computed. */
    void heated() {
        run.start(boilwright.sequence.Clock.FROM_COLD);
        for (int i = 1; i <= number(Action.HEAT); i++) {
            double at = steps().get(i - 1).moment().atS();
            pass(Math.max(0, at - run.look().clockS()));
            Outcome outcome = run.tick(i, false);
            if (!outcome.isDone()) {
                throw new AssertionError(outcome);
            }
        }
    }

    /** How long until something, s. */
    double left(String words) {
        return run.look().remaining().stream()
                .filter(ahead -> ahead.words().contains(words))
                .findFirst()
                .orElseThrow()
                .leftS();
    }
}
