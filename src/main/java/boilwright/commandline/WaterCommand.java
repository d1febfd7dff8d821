package boilwright.commandline;

import boilwright.answers.WaterAnswer;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CurvesPicture;
import boilwright.report.WaterJson;
import boilwright.report.WaterText;
import boilwright.rig.Rig;
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

    private final AnswerSource source;

    @Option(
            names = "--session",
            paramLabel = "TIME",
            defaultValue = "2 h",
            description = "Length of a session, for the ice; 2 h unless given.")
    private String session;

    WaterCommand(Terminal terminal, AnswerSource source) {
        super(terminal);
        this.source = source;
    }

    @Override
    void checkOptions() {
        TimeOption.read("--session", session, LONGEST_SESSION_S);
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        double length = TimeOption.read("--session", session, LONGEST_SESSION_S);
        WaterAnswer answer = source.water(rig, fluid, dataVersion, length, cancel, progress);
        return new Answer(
                () -> WaterText.write(answer),
                () -> WaterJson.write(answer),
                answer.check().warmup(),
                Optional.of(() -> CurvesPicture.png(
                        rig.name(),
                        CircuitSolver.curves(rig, POINTS),
                        answer.steady().flow())),
                answer.anyFails());
    }
}
