package boilwright.commandline;

import picocli.CommandLine.Option;

/** The whole answer in place of the short one. */
final class AllOption {
    @Option(
            names = "--all",
            description =
                    "Print everything; without it verdict, root cause, what fails or is tight, and the cautions of the moment.")
    private boolean all;

    /** Whether everything is wanted. */
    boolean isGiven() {
        return all;
    }
}
