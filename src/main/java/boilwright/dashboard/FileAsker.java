package boilwright.dashboard;

import java.nio.file.Path;
import java.util.Optional;

/** Asks a person for a file: by the system's own dialogue, or in tests by what the test says. */
interface FileAsker {
    /** Which rig file to open. */
    Optional<Path> fileToOpen();

    /** Which file with a fluid of the person's own to open. */
    Optional<Path> fluidToOpen();

    /** Which record of a rise test to open. */
    Optional<Path> recordToOpen();

    /** Where to save a sheet for the bench. */
    Optional<Path> sheetToSave(String suggestedName);

    /** Where to save the rig. */
    Optional<Path> fileToSave(String suggestedName);
}
