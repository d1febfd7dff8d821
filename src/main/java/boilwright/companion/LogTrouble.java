package boilwright.companion;

import boilwright.errors.Message;
import java.nio.file.Path;

/**
 * Why the log can't be written now. Its lines are kept, in order, until it can.
 *
 * @param file the file that should have been written
 * @param message the trouble in a whole sentence
 * @param kept how many lines wait
 */
public record LogTrouble(Path file, Message message, int kept) {}
