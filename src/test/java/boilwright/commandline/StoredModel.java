package boilwright.commandline;

import boilwright.answers.CheckQuestion;
import boilwright.answers.CooldownQuestion;
import boilwright.answers.EstimateQuestion;
import boilwright.answers.GuessRankingQuestion;
import boilwright.answers.Margin;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.Stored;
import boilwright.answers.WarmupQuestion;
import boilwright.estimate.RigEstimate;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.Samples;
import boilwright.spread.SpreadQuestion;
import java.util.List;
import java.util.Optional;

/**
 * Gives the same answers about every rig for the questions that have samples, stored ones for all others, or fails in a given way; so the
 * commands can be tested without waiting for the model.
 */
final class StoredModel implements Model {
    private final Margin.Status heat;
    private final Throwable fault;
    private int asked;
    private CancelToken stopped = new CancelToken();
    private double stopAt = Double.POSITIVE_INFINITY;

    private StoredModel(Margin.Status heat, Throwable fault) {
        this.heat = heat;
        this.fault = fault;
    }

    /** Answers in which the heat margin has this status. */
    static StoredModel with(Margin.Status heat) {
        return new StoredModel(heat, null);
    }

    /** No answers: this is thrown. */
    static StoredModel failing(Throwable fault) {
        return new StoredModel(Margin.Status.HOLDS, fault);
    }

    /** Has this token raised when an uncertainty run has come this far. */
    StoredModel stopping(CancelToken cancel, double share) {
        stopped = cancel;
        stopAt = share;
        return this;
    }

    /** How many questions were asked. */
    int asked() {
        return asked;
    }

    @Override
    @SuppressWarnings("unchecked") // each sample is the answer to its kind of question
    public <A> A answer(Question<A> question, CancelToken cancel, ProgressSink progress) {
        asked++;
        if (fault instanceof RuntimeException exception) {
            throw exception;
        }
        if (fault instanceof Error error) {
            throw error;
        }
        return (A) stored(question, cancel, progress);
    }

    private Object stored(Question<?> question, CancelToken cancel, ProgressSink progress) {
        if (question instanceof CheckQuestion) {
            return Samples.check(heat);
        }
        if (question instanceof WarmupQuestion) {
            return Samples.runAnswer("warmup", heat);
        }
        if (question instanceof CooldownQuestion) {
            return Samples.runAnswer("cooldown", heat);
        }
        if (question instanceof EstimateQuestion) {
            return new RigEstimate(Samples.check(heat).rig(), List.of(), Optional.empty(), List.of());
        }
        if (question instanceof GuessRankingQuestion) {
            return List.of();
        }
        if (question instanceof SpreadQuestion) { // anew, because it is timed
            return Model.COMPUTING.answer(question, cancel, (share, phase) -> {
                progress.progress(share, phase);
                if (share >= stopAt) {
                    stopped.cancel();
                }
            });
        }
        return Stored.MODEL.answer(question, cancel, progress);
    }
}
