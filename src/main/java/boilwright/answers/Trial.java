package boilwright.answers;

import boilwright.errors.ComputationException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import boilwright.thermal.TimeEvent;
import java.util.ArrayList;
import java.util.List;

/**
 * What a question asked of very many rigs keeps of each: margins and events, without verdict, cautions and notes.
 *
 * @param margins those of a check, or along the run where only that was asked for; worst first
 * @param events those of the warm-up; none without it
 */
public record Trial(List<Margin> margins, List<TimeEvent> events) {
    public Trial {
        margins = List.copyOf(margins);
        events = List.copyOf(events);
    }

    /**
     * The margins at rest, without the one of fuel, for which a warm-up would have to be computed.
     *
     * @param asked the rig and the values of the uncertain defaults
     * @throws ComputationException when no answer can be stood behind
     */
    public static Trial atRest(Asked asked) {
        return new Trial(RestAnswer.of(asked).margins(), List.of());
    }

    /**
     * Margins and events of a whole check.
     *
     * @param asked the rig and the values of the uncertain defaults
     * @param cancel stops the computation
     * @throws ComputationException when no answer can be stood behind
     * @throws boilwright.errors.CancelledException when cancelled
     */
    public static Trial ofCheck(Asked asked, CancelToken cancel) {
        SteadySolver solver = new SteadySolver(asked.rig(), asked.tables(), asked.values());
        SteadyState steady = solver.steady();
        RestAnswer.requireClosed("the steady state", steady.closureRelative());
        NeededState needed = solver.needed();
        RestAnswer.requireClosed("the needed state", needed.state().closureRelative());
        RunResult run = warmup(asked, cancel); // last: what has no state at rest is refused without the long wait
        List<Margin> findings = new ArrayList<>(Margins.atRest(asked, steady, needed));
        findings.addAll(RunMargins.ofWarmup(asked, run));
        findings.addAll(SessionJudge.along(asked, cancel));
        return new Trial(Margins.ledger(findings), run.events());
    }

    /** Margins and events of a warm-up; arguments and errors as for {@link #ofCheck}. */
    public static Trial ofWarmup(Asked asked, CancelToken cancel) {
        RunResult run = warmup(asked, cancel);
        return new Trial(Margins.worstFirst(RunMargins.ofWarmup(asked, run)), run.events());
    }

    private static RunResult warmup(Asked asked, CancelToken cancel) {
        return RunSimulator.warmup(asked.rig(), asked.tables(), asked.values(), cancel, ProgressSink.NONE);
    }
}
