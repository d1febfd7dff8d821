package boilwright.commandline;

import boilwright.answers.DrillAnswer;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.DrillJson;
import boilwright.report.DrillText;
import boilwright.rig.Rig;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** A fault, played through. */
@Command(
        name = "drill",
        description = "What a fault does in the next hour, with the heat left on, cut later, and cut at once.",
        sortOptions = false)
final class DrillCommand extends RigCommand {
    /** Faults whose names are taken for drills to come. */
    private static final List<String> TO_COME =
            List.of("mains", "heater-stuck", "backing", "cartridge-empty", "air-inlet", "chiller-trip", "fan");

    private static final String WATER = "water";
    /** Nobody waits longer than this for a fault, s. */
    private static final double LATEST_S = 48 * 3600;

    private final AnswerSource source;

    @Option(names = "--fault", required = true, paramLabel = "FAULT", description = "What fails: water.")
    private String fault;

    @Option(
            names = "--at",
            paramLabel = "TIME",
            description =
                    "When it fails, from cold along the rig's schedule, such as \"20 min\"; else at rest at full power.")
    private String at;

    @Option(
            names = "--cut-after",
            paramLabel = "TIME",
            defaultValue = "2 min",
            description = "How long after the fault the heat is cut late; 2 min unless given.")
    private String cutAfter;

    DrillCommand(Terminal terminal, AnswerSource source) {
        super(terminal);
        this.source = source;
    }

    @Override
    void checkOptions() {
        if (TO_COME.contains(fault)) {
            throw new InputRefusedException(Message.of(MessageKey.DRILL_NOT_YET, fault, WATER));
        }
        if (!fault.equals(WATER)) {
            throw new InputRefusedException(
                    Message.of(MessageKey.DRILL_UNKNOWN, fault.replaceAll("\\p{Cntrl}", "?"), WATER));
        }
        if (at != null) {
            TimeOption.read("--at", at, LATEST_S);
        }
        TimeOption.read("--cut-after", cutAfter, LATEST_S);
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        OptionalDouble when =
                at == null ? OptionalDouble.empty() : OptionalDouble.of(TimeOption.read("--at", at, LATEST_S));
        DrillAnswer answer = source.drillWater(
                rig, fluid, dataVersion, when, TimeOption.read("--cut-after", cutAfter, LATEST_S), cancel, progress);
        return new Answer(
                () -> DrillText.write(answer),
                () -> DrillJson.write(answer),
                answer.heatOn().run(),
                Optional.empty(),
                !answer.notKept().isEmpty());
    }
}
