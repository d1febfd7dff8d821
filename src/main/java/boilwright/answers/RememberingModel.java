package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Computes an answer once and gives it again while it is among the last ones that were wanted: several questions about one rig
 * then share its check. May be asked by several threads at a time.
 */
public final class RememberingModel implements Model {
    private final Map<Question<?>, Object> answers;

    /** @param most how many answers are kept, at least 1 */
    public RememberingModel(int most) {
        answers = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Question<?>, Object> eldest) {
                return size() > most;
            }
        };
    }

    @Override
    public <A> A answer(Question<A> question, CancelToken cancel, ProgressSink progress) {
        synchronized (answers) {
            @SuppressWarnings("unchecked") // put in below, as the answer to an equal question
            A known = (A) answers.get(question);
            if (known != null) {
                return known;
            }
        }
        A answer = question.answer(this, cancel, progress);
        // what was stopped on the way may be an answer from a part only
        if (!cancel.isCancelled()) {
            synchronized (answers) {
                answers.put(question, answer);
            }
        }
        return answer;
    }
}
