package boilwright.commandline;

import boilwright.errors.InputRefusedException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/** Which rig a command line names: a file, or a demo. */
final class RigChoice {
    private static final String DEMO = "demo:";

    private final String name;

    RigChoice(String name) {
        this.name = name;
    }

    /** The file; empty for a demo. */
    Optional<Path> file() {
        return name.startsWith(DEMO) ? Optional.empty() : Optional.of(path("RIG", name));
    }

    /**
     * Reads it.
     *
     * @param accepted fields whose likely slips are meant
     */
    Rig read(FluidLibrary library, List<String> accepted) {
        LinkedHashSet<String> fields = new LinkedHashSet<>(accepted);
        Optional<Path> file = file();
        return file.isPresent()
                ? RigReader.read(file.get(), library.workingFluids(), fields)
                : RigReader.readDemo(name.substring(DEMO.length()), library.workingFluids(), fields);
    }

    private static Path path(String what, String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException e) {
            throw new InputRefusedException(Message.of(MessageKey.PATH_NOT_UNDERSTOOD, what, text));
        }
    }
}
