package boilwright.commandline;

import boilwright.fluid.FluidLibrary;
import boilwright.report.FluidsJson;
import boilwright.report.FluidsText;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What is known of the working fluids. */
@Command(
        name = "fluids",
        description = "The working fluids that a rig may name, or all that is known of one of them.",
        sortOptions = false)
final class FluidsCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "ID", arity = "0..1", description = "Show every figure of this fluid, with its source.")
    private Optional<String> id;

    @Mixin
    private FluidsOption fluids;

    @Option(names = "--json", description = "Print as JSON, for other programs.")
    private boolean json;

    @Mixin
    private HelpOption help;

    FluidsCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        FluidLibrary library = fluids.library();
        String answer;
        if (json) {
            answer = FluidsJson.write(library, id.map(List::of).orElseGet(library::ids));
        } else {
            answer = id.map(one -> FluidsText.one(library, one)).orElseGet(() -> FluidsText.list(library));
        }
        terminal.answer(answer);
        return ExitCode.HOLDS;
    }
}
