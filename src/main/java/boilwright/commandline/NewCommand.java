package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.EstimateQuestion;
import boilwright.answers.GuessRankingQuestion;
import boilwright.answers.Model;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.estimate.OutsideMeasurements;
import boilwright.estimate.RankedGuess;
import boilwright.estimate.RigEstimate;
import boilwright.files.AtomicFile;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.NewRigText;
import boilwright.rig.file.RigWriter;
import boilwright.spread.Certainty;
import boilwright.spread.CertaintyQuestion;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A new rig file from what can be measured on the outside of a pump. */
@Command(
        name = "new",
        description = {
            "Write a rig file from what can be measured on the outside of a pump; everything else is guessed, and marked.",
            "Lengths, powers and so on are written with their unit, such as \"75 mm\"."
        },
        sortOptions = false)
final class NewCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Model model;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "Where to write the rig.")
    private Path out;

    @Option(names = "--force", description = "Replace the file when there is one.")
    private boolean force;

    @Mixin
    private MeasurementOptions measurements;

    @Mixin
    private FluidsOption fluids;

    @Option(
            names = "--accept",
            paramLabel = "FIELD",
            description = "Go on although this field looks like a slip; repeat it for several fields.")
    private List<String> accepted = List.of();

    @Mixin
    private HelpOption help;

    NewCommand(Terminal terminal, Model model) {
        this.terminal = terminal;
        this.model = model;
    }

    @Override
    public Integer call() {
        Set<String> fields = new LinkedHashSet<>(accepted);
        FluidLibrary library = fluids.library();
        OutsideMeasurements measured = measurements.read(fields, library.workingFluids());
        refuseExisting();
        AtomicFile.requireWritable(out);
        WorkingFluid fluid = library.find(measured.fluidId());
        RigEstimate estimate =
                model.answer(new EstimateQuestion(measured, fluid, fields), terminal.cancel(), ProgressSink.NONE);
        terminal.cancel().check();
        Asked asked = Asked.of(estimate.rig(), library);
        Optional<List<RankedGuess>> ranking = ranking(asked);
        Certainty certainty = model.answer(new CertaintyQuestion(asked), terminal.cancel(), ProgressSink.NONE);
        terminal.cancel().check();
        AtomicFile.write(out, RigWriter.write(estimate.rig()).getBytes(StandardCharsets.UTF_8));
        terminal.answer(NewRigText.write(estimate, certainty, ranking, out.toString(), next(fields)));
        return ExitCode.HOLDS;
    }

    private void refuseExisting() {
        if (!force && Files.exists(out, LinkOption.NOFOLLOW_LINKS)) {
            throw new InputRefusedException(Message.of(MessageKey.NEW_FILE_EXISTS, out.toString()));
        }
    }

    /** The rig is worth writing even when the model finds no working state of it: then there is just no ranking. */
    private Optional<List<RankedGuess>> ranking(Asked asked) {
        GuessRankingQuestion question = new GuessRankingQuestion(asked);
        CancelToken cancel = terminal.cancel();
        try {
            if (!terminal.interactive()) {
                return Optional.of(model.answer(question, cancel, ProgressSink.NONE));
            }
            try (ProgressLine line = new ProgressLine(terminal.err(), System::nanoTime)) {
                return Optional.of(model.answer(question, cancel, line));
            }
        } catch (ComputationException e) {
            return Optional.empty();
        }
    }

    private String next(Set<String> fields) {
        StringBuilder next = new StringBuilder("boilwright check ").append(quoted(out.toString()));
        next.append(fluids.isGiven() ? " --fluids " + quoted(fluids.folder()) : "");
        fields.forEach(field -> next.append(" --accept ").append(quoted(field)));
        return next.toString();
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./:\\\\-]+") ? word : '"' + word + '"';
    }
}
