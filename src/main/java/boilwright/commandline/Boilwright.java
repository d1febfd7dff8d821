package boilwright.commandline;

import boilwright.answers.Model;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import boilwright.files.FaultReport;
import boilwright.files.ProgramVersion;
import boilwright.numerics.CancelToken;
import boilwright.units.NearestSpelling;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program as a terminal starts it. */
@Command(
        name = "boilwright",
        description = {
            "Heat, cooling and warm-up of a vapour-jet (diffusion) pump: does the heat drive every jet, does the water carry"
                    + " the load, how long does it take.",
            "Without a command the window opens on a demo rig.",
            ""
        },
        versionProvider = Boilwright.Version.class,
        footer = {
            "",
            "Exit codes: 0 all margins hold or are tight, 1 some margin fails, a record stays undecided or a plan is not safe, 2 input or usage refused, 3 energy balance not"
                    + " closed, 4 output not written, 5 internal fault, 130 stopped by you."
        },
        sortOptions = false)
public final class Boilwright implements Runnable {
    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    @CommandLine.Mixin
    private HelpOption help;

    @CommandLine.Option(names = "--version", versionHelp = true, description = "Print the version and stop.")
    private boolean version;

    private Boilwright(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Starts the program, and ends it with the exit code that says how it went. */
    public static void main(String[] arguments) {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        CancelToken cancel = new CancelToken();
        Interrupt interrupt = Interrupt.raising(cancel);
        Terminal terminal = new Terminal(out, err, Path.of(""), isWatched(), cancel);
        int code = run(terminal, Model.COMPUTING, WindowSource.ITSELF, arguments);
        interrupt.nothingLeft();
        System.exit(code);
    }

    /** Runs one command line and gives its exit code; never throws. */
    static int run(Terminal terminal, Model model, WindowSource window, String... arguments) {
        try {
            // Whoever just starts the program wants to see it.
            String[] line = arguments.length == 0 ? new String[] {"dashboard"} : arguments;
            return commands(terminal, model, window).execute(line);
        } catch (Throwable fault) { // errors too: whatever happens, no trace reaches the screen
            return fault(terminal, fault, arguments);
        }
    }

    /** The commands, each with its options. */
    static CommandLine commands(Terminal terminal, Model model, WindowSource window) {
        CommandLine commands = new CommandLine(new Boilwright(terminal))
                .addSubcommand(new DashboardCommand(terminal, window))
                .addSubcommand(new CheckCommand(terminal, model))
                .addSubcommand(new WarmupCommand(terminal, model))
                .addSubcommand(new CooldownCommand(terminal, model))
                .addSubcommand(new WaterCommand(terminal, model))
                .addSubcommand(new SizeCommand(terminal, model))
                .addSubcommand(new CompareCommand(terminal, model))
                .addSubcommand(new VacuumCommand(terminal, model))
                .addSubcommand(new DrillCommand(terminal, model))
                .addSubcommand(new PlanCommand(terminal, model))
                .addSubcommand(new RiseCommand(terminal, model))
                .addSubcommand(new SpreadCommand(terminal, model))
                .addSubcommand(new NewCommand(terminal, model))
                .addSubcommand(new FluidsCommand(terminal, model));
        return commands.setExpandAtFiles(false)
                .setUsageHelpWidth(100)
                .setUsageHelpAutoWidth(false)
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setOut(writer(terminal.out()))
                .setErr(writer(terminal.err()))
                .setParameterExceptionHandler((refusal, args) -> refused(terminal, refusal))
                .setExecutionExceptionHandler((fault, command, parsed) ->
                        stopped(terminal, fault, parsed.originalArgs().toArray(String[]::new)));
    }

    @Override
    public void run() {
        terminal.answer(spec.commandLine().getUsageMessage(Ansi.OFF));
    }

    private static int refused(Terminal terminal, ParameterException refusal) {
        if (refusal.getCause() instanceof InputRefusedException input) {
            return stopped(terminal, input);
        }
        terminal.say(usageFault(refusal));
        return ExitCode.REFUSED;
    }

    private static int stopped(Terminal terminal, Exception fault, String... arguments) {
        if (fault instanceof InputRefusedException refusal) {
            refusal.faults().forEach(terminal::say);
            return ExitCode.REFUSED;
        }
        if (fault instanceof ComputationException computation) {
            terminal.say(computation.reason());
            return ExitCode.NOT_CLOSED;
        }
        if (fault instanceof OutputNotWrittenException output) {
            terminal.say(output.reason());
            return ExitCode.NOT_WRITTEN;
        }
        if (fault instanceof CancelledException) {
            terminal.say(Message.of(MessageKey.STOPPED));
            return ExitCode.CANCELLED;
        }
        return fault(terminal, fault, arguments);
    }

    private static int fault(Terminal terminal, Throwable fault, String... arguments) {
        List<Path> folders = List.of(terminal.folder(), Path.of(System.getProperty("java.io.tmpdir")));
        terminal.say(FaultReport.write(fault, List.of(arguments), folders));
        return ExitCode.FAULT;
    }

    /** The start script knows whether the errors' stream is a terminal; Java only whether everything is. */
    private static boolean isWatched() {
        String told = System.getProperty("boilwright.watched");
        return told == null ? System.console() != null : Boolean.parseBoolean(told);
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new FileOutputStream(descriptor), false, StandardCharsets.UTF_8);
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(stream, true, StandardCharsets.UTF_8);
    }

    /** The version as the build stamped it. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"Boilwright " + ProgramVersion.current()};
        }
    }

    static Message usageFault(ParameterException refusal) {
        CommandSpec spec = refusal.getCommandLine().getCommandSpec();
        String help = spec.qualifiedName();
        if (refusal instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String found = unmatched.getUnmatched().get(0).replaceAll("\\p{Cntrl}", "?");
            String word = found.contains("=") ? found.substring(0, found.indexOf('=')) : found;
            Optional<String> near = NearestSpelling.of(word, words(refusal.getCommandLine()));
            return near.isPresent()
                    ? Message.of(MessageKey.ARGUMENT_UNKNOWN_NEAR, found, near.get(), help)
                    : Message.of(MessageKey.ARGUMENT_UNKNOWN, found, help);
        }
        String sentence = refusal.getMessage().replaceAll("\\p{Cntrl}", " ").replaceAll("[.\\s]*$", "") + ".";
        return Message.of(MessageKey.USAGE_REFUSED, sentence, help);
    }

    /** What may stand on a command's line besides values. */
    private static List<String> words(CommandLine command) {
        List<String> words = new ArrayList<>(command.getSubcommands().keySet());
        words.addAll(command.getCommandSpec().optionsMap().keySet());
        return words;
    }
}
