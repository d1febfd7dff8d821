package boilwright.commandline;

import boilwright.fluid.FluidLibrary;
import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Fluids beyond those that come with the program. */
final class FluidsOption {
    @Option(
            names = "--fluids",
            paramLabel = "DIR",
            description = "Read more working fluids from the files in this folder; they pass the same checks.")
    private Path folder;

    /** The fluids that may be named. */
    FluidLibrary library() {
        FluidLibrary builtIn = FluidLibrary.builtIn();
        return folder == null ? builtIn : builtIn.withFolder(folder);
    }

    /** Whether a folder was named. */
    boolean isGiven() {
        return folder != null;
    }

    /** The folder that was named; there is one. */
    String folder() {
        return folder.toString();
    }
}
