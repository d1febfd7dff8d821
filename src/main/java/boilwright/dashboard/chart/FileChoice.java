package boilwright.dashboard.chart;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person which file a chart goes to. */
public interface FileChoice {
    /**
     * The file, or nothing when the person thought better of it.
     *
     * @param suggestedName name with the ending of the kind of file
     */
    Optional<Path> fileFor(String suggestedName, ChartFormat format);
}
