package boilwright.dashboard.companion;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person where else a log may go. */
@FunctionalInterface
public interface PlaceAsker {
    /**
     * Where the log shall go on.
     *
     * @param suggested name of the file
     * @return a file that is not there yet; empty for nowhere else
     */
    Optional<Path> elsewhere(String suggested);
}
