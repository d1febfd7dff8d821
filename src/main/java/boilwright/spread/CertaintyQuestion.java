package boilwright.spread;

import boilwright.answers.Asked;
import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.answers.Question;
import boilwright.answers.Trial;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.numerics.SobolPoints;
import boilwright.rig.Rig;
import boilwright.rig.file.RigEdit;
import java.util.Arrays;

/**
 * How likely is it that every jet of a rig fills? A few states of rest, always the same ones: enough to tell "will", "will not" and
 * "cannot tell" apart.
 *
 * @param asked the rig
 */
public record CertaintyQuestion(Asked asked) implements Question<Certainty> {
    /** How many samples are drawn. */
    public static final int SAMPLES = 32;

    private static final long SHIFT = 1;

    @Override
    public Certainty answer(Model model, CancelToken cancel, ProgressSink progress) {
        Rig rig = asked.rig();
        if (rig.guesses().isEmpty()) {
            return new Certainty(0, new Chance(0, 0));
        }
        SpreadInputs inputs = new SpreadInputs(rig, java.util.List.of());
        int known = inputs.list().size();
        // one coordinate more for the pressure that the jets are made for, where neither it nor the throats are known
        SobolPoints points = new SobolPoints(known + 1, SHIFT);
        long full = 0;
        long answered = 0;
        for (int i = 0; i < SAMPLES; i++) {
            cancel.check();
            double[] point = points.point(i);
            try {
                SpreadInputs.Drawn drawn = inputs.draw(Arrays.copyOf(point, known));
                Rig sample = madeFor(drawn.rig(), point[known]);
                full += isFull(Trial.atRest(asked.with(sample, drawn.values()))) ? 1 : 0;
                answered++;
            } catch (InputRefusedException | ComputationException e) {
                // values that no rig can have together, or no state of rest: no sample
            }
        }
        return new Certainty(rig.guesses().size(), new Chance(full, answered));
    }

    private Rig madeFor(Rig rig, double share) {
        boolean throatsGuessed = rig.guesses().stream().anyMatch(path -> path.endsWith("throatGap"));
        if (!throatsGuessed || rig.limits().requiredBoilerPressurePa().isPresent()) {
            return rig;
        }
        double[] range = asked.fluid().usualBoilerPressureRange();
        double pa = Shape.LOG_UNIFORM.at(share, range[0], asked.fluid().usualBoilerPressure(), range[1]);
        return RigEdit.of("limits.requiredBoilerPressure", pa).applied(rig);
    }

    private static boolean isFull(Trial trial) {
        return trial.margins().stream().anyMatch(m -> m.id() == MarginId.JETS && m.status() == Margin.Status.HOLDS);
    }
}
