package boilwright.answers;

import boilwright.estimate.GuessRanking;
import boilwright.files.ProgramVersion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;
import boilwright.thermal.NeededState;
import boilwright.thermal.RunResult;
import boilwright.thermal.RunSimulator;
import boilwright.thermal.SteadySolver;
import boilwright.thermal.SteadyState;
import java.util.ArrayList;
import java.util.List;

/**
 * Is the heat enough, what are the margins, how long is warm-up?
 *
 * @param asked the rig
 * @param rankGuesses whether to say also which guess of the rig moves the heat margin most; that takes two needed states for each
 *     guess, more time than the rest of a check
 */
public record CheckQuestion(Asked asked, boolean rankGuesses) implements Question<CheckAnswer> {
    /** Without a ranking of guesses. */
    public CheckQuestion(Asked asked) {
        this(asked, false);
    }

    @Override
    public CheckAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        Rig rig = asked.rig();
        SteadySolver solver = new SteadySolver(rig, asked.tables(), asked.values());
        SteadyState steady = solver.steady();
        RestAnswer.requireClosed("the steady state", steady.closureRelative());
        cancel.check();
        NeededState needed = solver.needed();
        RestAnswer.requireClosed("the needed state", needed.state().closureRelative());
        cancel.check();
        RunResult warmup = RunSimulator.warmup(rig, asked.tables(), asked.values(), cancel, progress);
        List<Margin> findings = new ArrayList<>(Margins.atRest(asked, steady, needed));
        remedy(findings, needed, cancel);
        findings.addAll(RunMargins.ofWarmup(asked, warmup));
        findings.addAll(SessionJudge.along(asked, cancel));
        List<Margin> margins = Margins.ledger(findings);
        List<String> notes = new ArrayList<>(steady.assumptions());
        warmup.assumptions().stream().filter(a -> !notes.contains(a)).forEach(notes::add);
        if (steady.waterOutK().isPresent()
                && rig.cooling().inletTemperatureK()
                        < rig.limits().waterInLowK().orElse(MarginRules.WATER_IN_GOOD_LOW_K)) {
            notes.add(AnswerText.NOTE_WATER_COLD.say());
        }
        notes.addAll(asked.rangeNotes(Math.max(steady.innerFaceK(), steady.liquidTemperatureK())));
        if (rankGuesses) {
            notes.add(GuessRanking.sentence(rig, model.answer(new GuessRankingQuestion(asked), cancel, progress)));
        } else {
            GuessRanking.reminder(rig).ifPresent(notes::add);
        }
        return new CheckAnswer(
                asked,
                Verdict.ofCheck(asked, steady, needed, warmup, margins),
                steady,
                needed,
                warmup,
                findings,
                margins,
                Cautions.of(rig, asked.fluid(), steady.hottestOutsideK(), false),
                notes,
                ProgramVersion.current());
    }

    /** Says of heat that is short or tight what would help, tried on this rig. */
    private void remedy(List<Margin> atRest, NeededState needed, CancelToken cancel) {
        HeatLimiter limiter = HeatLimiter.of(asked.rig(), asked.values(), needed);
        atRest.replaceAll(
                margin -> margin.id() == MarginId.HEAT && !margin.cure().isEmpty()
                        ? margin.withCure(limiter.reason() + " "
                                + HeatRemedy.of(asked, needed, limiter, List.copyOf(atRest), cancel))
                        : margin);
    }
}
