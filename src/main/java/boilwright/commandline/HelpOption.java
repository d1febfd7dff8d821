package boilwright.commandline;

import picocli.CommandLine.Option;

/** Asks for the usage of a command. */
final class HelpOption {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Print this help and stop.")
    private boolean help;
}
