package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.SessionOutlook;
import boilwright.answers.SessionQuestion;
import boilwright.answers.WaterAnswer;
import boilwright.answers.WaterQuestion;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CurvesPicture;
import boilwright.report.WaterJson;
import boilwright.report.WaterText;
import boilwright.water.CircuitSolver;
import java.util.Optional;
import picocli.CommandLine.Command;

/** The cooling side of a rig. */
@Command(
        name = "water",
        description = "What the water carries and needs: flow, every element, chiller, pump, tank and ice."
                + " --png draws supply and circuit against flow.",
        sortOptions = false)
final class WaterCommand extends RigCommand {
    private static final int POINTS = 200;

    WaterCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        WaterAnswer answer = model.answer(new WaterQuestion(asked), cancel, progress);
        SessionOutlook session = model.answer(new SessionQuestion(asked), cancel, progress);
        return new Answer(
                () -> WaterText.write(answer, session),
                () -> WaterJson.write(answer, session),
                answer.check().warmup(),
                Optional.of(() -> CurvesPicture.png(
                        asked.rig().name(),
                        CircuitSolver.curves(asked.rig(), POINTS),
                        answer.steady().flow())),
                answer.anyFails());
    }
}
