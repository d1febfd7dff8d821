package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
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
import picocli.CommandLine.Option;

/** The cooling side of a rig. */
@Command(
        name = "water",
        description = "What the water carries and needs: flow, every element, chiller, pump, tank and ice."
                + " --png draws supply and circuit against flow.",
        sortOptions = false)
final class WaterCommand extends RigCommand {
    private static final int POINTS = 200;
    private static final double LONGEST_SESSION_S = 48 * 3600;

    @Option(
            names = "--session",
            paramLabel = "TIME",
            defaultValue = "2 h",
            description = "Length of a session, for the ice; 2 h unless given.")
    private String session;

    WaterCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        TimeOption.read("--session", session, LONGEST_SESSION_S);
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        double length = TimeOption.read("--session", session, LONGEST_SESSION_S);
        WaterAnswer answer = model.answer(new WaterQuestion(asked.withSession(length)), cancel, progress);
        return new Answer(
                () -> WaterText.write(answer),
                () -> WaterJson.write(answer),
                answer.check().warmup(),
                Optional.of(() -> CurvesPicture.png(
                        asked.rig().name(),
                        CircuitSolver.curves(asked.rig(), POINTS),
                        answer.steady().flow())),
                answer.anyFails());
    }
}
