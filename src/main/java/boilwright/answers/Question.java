package boilwright.answers;

import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/**
 * A question that a person has, with everything that its answer depends on: equal questions have equal answers. Whoever wants
 * the answer hands it to a {@link Model}.
 *
 * @param <A> what answers it: one immutable value
 */
public interface Question<A> {
    /**
     * Works the answer out.
     *
     * @param model answers the questions that this one rests on, such as the check of the same rig
     * @param cancel stops the computation
     * @param progress hears how far it is
     * @throws boilwright.errors.InputRefusedException when the question makes no sense for this rig
     * @throws boilwright.errors.ComputationException when no answer can be stood behind
     * @throws boilwright.errors.CancelledException when cancelled
     */
    A answer(Model model, CancelToken cancel, ProgressSink progress);
}
