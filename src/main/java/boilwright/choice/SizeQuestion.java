package boilwright.choice;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;

/**
 * How much heat source is enough for a rig?
 *
 * @param asked the rig
 * @param margin heat available over heat needed that is wanted, above 0
 */
public record SizeQuestion(Asked asked, double margin) implements Question<SizeAnswer> {
    /** Margin asked for when none is named. */
    public static final double USUAL_MARGIN = 1.25;

    @Override
    public SizeAnswer answer(Model model, CancelToken cancel, ProgressSink progress) {
        return Sizing.of(asked, margin, cancel).answer();
    }
}
