package boilwright.answers;

import boilwright.estimate.GuessRanking;
import boilwright.estimate.RankedGuess;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import java.util.List;

/**
 * Which guess of a rig moves its heat margin most?
 *
 * @param asked the rig with its guesses marked
 */
public record GuessRankingQuestion(Asked asked) implements Question<List<RankedGuess>> {
    @Override
    public List<RankedGuess> answer(Model model, CancelToken cancel, ProgressSink progress) {
        return GuessRanking.of(asked.rig(), asked.fluid(), cancel, progress);
    }
}
