package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/** Answers questions: for the commands, for the window, and for questions that rest on others. */
public interface Model {
    /** Computes every answer anew. */
    Model COMPUTING = new Model() {
        @Override
        public <A> A answer(Question<A> question, CancelToken cancel, ProgressSink progress) {
            return question.answer(this, cancel, progress);
        }
    };

    /** The answer to a question; arguments and errors as for {@link Question#answer}. */
    <A> A answer(Question<A> question, CancelToken cancel, ProgressSink progress);
}
