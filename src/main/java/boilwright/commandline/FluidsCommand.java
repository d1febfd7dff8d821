package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.choice.FluidsAnswer;
import boilwright.choice.FluidsQuestion;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.ProgressSink;
import boilwright.report.FluidsJson;
import boilwright.report.FluidsText;
import boilwright.rig.Rig;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is known of the working fluids. */
@Command(
        name = "fluids",
        description =
                "The working fluids that a rig may name, all that is known of one of them, or one rig with each of them.",
        sortOptions = false)
final class FluidsCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Model model;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Show every figure of this fluid, with its source.")
    private Optional<String> id;

    @Option(
            names = "--for",
            paramLabel = "RIG",
            description = "Show this rig, a file or demo:NAME, filled with each fluid, or with the one named.")
    private String rigName;

    @Option(
            names = "--accept",
            paramLabel = "FIELD",
            description = "Go on although this field of the rig looks like a slip; repeat it for several fields.")
    private List<String> accepted = List.of();

    @Mixin
    private SetOption set;

    @Mixin
    private FluidsOption fluids;

    @Option(names = "--json", description = "Print as JSON, for other programs.")
    private boolean json;

    @Mixin
    private HelpOption help;

    FluidsCommand(Terminal terminal, Model model) {
        this.terminal = terminal;
        this.model = model;
    }

    @Override
    public Integer call() {
        FluidLibrary library = fluids.library();
        if (rigName != null) {
            terminal.answer(withEach(library));
            return ExitCode.HOLDS;
        }
        if (!accepted.isEmpty() || set.isGiven()) {
            throw new InputRefusedException(
                    Message.of(MessageKey.CHOICE_ACCEPT_ALONE, accepted.isEmpty() ? "--set" : "--accept"));
        }
        String answer;
        if (json) {
            answer = FluidsJson.write(library, id.map(List::of).orElseGet(library::ids));
        } else {
            answer = id.map(one -> FluidsText.one(library, one)).orElseGet(() -> FluidsText.list(library));
        }
        terminal.answer(answer);
        return ExitCode.HOLDS;
    }

    private String withEach(FluidLibrary library) {
        Rig rig = set.applied(new RigChoice(rigName).read(library, accepted), library, accepted);
        Map<String, WorkingFluid> all = new LinkedHashMap<>();
        // the rig's own first, for comparison with each other
        all.put(rig.fluidId(), library.find(rig.fluidId()));
        id.map(List::of).orElseGet(library::workingFluids).forEach(one -> all.put(one, library.find(one)));
        FluidsAnswer answer = answer(new FluidsQuestion(Asked.of(rig, library), all));
        return json ? FluidsJson.write(answer) : FluidsText.compared(answer);
    }

    private FluidsAnswer answer(FluidsQuestion question) {
        if (!terminal.interactive()) {
            return model.answer(question, terminal.cancel(), ProgressSink.NONE);
        }
        try (ProgressLine line = new ProgressLine(terminal.err(), System::nanoTime)) {
            return model.answer(question, terminal.cancel(), line);
        }
    }
}
