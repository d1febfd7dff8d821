package boilwright.dashboard.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The folder of this user in which the program keeps what it must remember between two starts: by the habits of the system,
 * or where the system property {@code boilwright.state} says. A home that can't be written to is no fault: then nothing is
 * remembered.
 */
public final class StateFolder {
    /** System property that names the folder. */
    public static final String PROPERTY = "boilwright.state";

    private StateFolder() {}

    /** The folder, made when it was not there; empty when it can't be had. */
    public static Optional<Path> find() {
        try {
            Path folder = name(System.getProperty(PROPERTY), System.getenv(), System.getProperty("user.home", ""));
            Files.createDirectories(folder);
            return Files.isWritable(folder) ? Optional.of(folder) : Optional.empty();
        } catch (IOException | InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Where it is, by what the person and the system say. */
    static Path name(String told, Map<String, String> environment, String home) {
        if (told != null && !told.isBlank()) {
            return Path.of(told);
        }
        String windows = environment.getOrDefault("LOCALAPPDATA", "");
        if (!windows.isBlank()) {
            return Path.of(windows, "boilwright");
        }
        String state = environment.getOrDefault("XDG_STATE_HOME", "");
        return state.isBlank() || !Path.of(state).isAbsolute()
                ? Path.of(home, ".local", "state", "boilwright")
                : Path.of(state, "boilwright");
    }
}
