package boilwright.answers;

import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.rig.Rig;

/** Answers for tests: a question that several tests share is computed once in their Java process. */
public final class Stored {
    /** Gives stored answers; whoever tests time, progress or stopping asks {@link Model#COMPUTING}. */
    public static final Model MODEL = new RememberingModel(256);
    /** The fluids that rigs may name. */
    public static final FluidLibrary FLUIDS = FluidLibrary.builtIn();

    private Stored() {}

    /** A rig as it is. */
    public static Asked asked(Rig rig) {
        return Asked.of(rig, FLUIDS);
    }

    /** The answer to a question. */
    public static <A> A answer(Question<A> question) {
        return MODEL.answer(question, new CancelToken(), ProgressSink.NONE);
    }

    /** The check of a rig. */
    public static CheckAnswer check(Rig rig) {
        return answer(new CheckQuestion(asked(rig)));
    }
}
