package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.VacuumAnswer;
import boilwright.answers.VacuumQuestion;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.gasflow.Gas;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.VacuumJson;
import boilwright.report.VacuumPage;
import boilwright.report.VacuumPicture;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The gas side of a rig. */
@Command(
        name = "vacuum",
        description = "What the gauge should read, where the gas comes from, what each piece of the line costs and what"
                + " each single change would gain. --png draws the pressures against time.",
        sortOptions = false)
final class VacuumCommand extends RigCommand {
    private static final double LONGEST_S = 30 * 24 * 3600;

    @Option(
            names = "--after",
            paramLabel = "TIME",
            defaultValue = "4 h",
            description = "How long after the foreline is down to look; 4 h unless given.")
    private String after;

    @Option(
            names = "--gas",
            paramLabel = "GAS",
            defaultValue = "air",
            description = "Gas that flows: air, nitrogen, water-vapour, hydrogen, helium, argon, carbon-dioxide; air"
                    + " unless given.")
    private String gas;

    @Mixin
    private AllOption all;

    VacuumCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        TimeOption.read("--after", after, 0, LONGEST_S);
        gas();
    }

    private Gas gas() {
        return Arrays.stream(Gas.values())
                .filter(known -> known.id().equals(gas))
                .findFirst()
                .orElseThrow(() -> new InputRefusedException(Message.of(
                        MessageKey.GAS_UNKNOWN,
                        gas,
                        Arrays.stream(Gas.values()).map(Gas::id).collect(Collectors.joining(", ")))));
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        double lookS = TimeOption.read("--after", after, 0, LONGEST_S);
        VacuumAnswer answer = model.answer(new VacuumQuestion(asked, gas(), lookS), cancel, progress);
        return new Answer(
                () -> all.isGiven() ? VacuumPage.write(answer) : VacuumPage.brief(answer),
                () -> VacuumJson.write(answer),
                answer.check().warmup(),
                Optional.of(() -> VacuumPicture.png(asked.rig().name(), answer.timeline())),
                answer.anyFails());
    }
}
