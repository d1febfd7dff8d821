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
        List<Margin> margins = Margins.of(rig, asked.fluid(), asked.values(), steady, needed, warmup);
        List<String> notes = new ArrayList<>(steady.assumptions());
        warmup.assumptions().stream().filter(a -> !notes.contains(a)).forEach(notes::add);
        notes.addAll(asked.rangeNotes(Math.max(steady.innerFaceK(), steady.liquidTemperatureK())));
        if (rankGuesses) {
            notes.add(GuessRanking.sentence(rig, model.answer(new GuessRankingQuestion(asked), cancel, progress)));
        } else {
            GuessRanking.reminder(rig).ifPresent(notes::add);
        }
        return new CheckAnswer(
                asked,
                Verdict.ofCheck(rig, asked.values(), steady, needed, warmup, margins),
                steady,
                needed,
                warmup,
                margins,
                Cautions.of(rig, asked.fluid(), steady.hottestOutsideK(), false),
                notes,
                ProgramVersion.current());
    }
}
