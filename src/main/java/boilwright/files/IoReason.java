package boilwright.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Why a file could not be read or written, in words that end a sentence. */
public final class IoReason {
    private IoReason() {}

    /** The reason as half a sentence about the file, such as "it does not exist". */
    public static String of(IOException fault) {
        if (fault instanceof NoSuchFileException) {
            return "it does not exist";
        }
        if (fault instanceof AccessDeniedException) {
            return "access to it is not permitted";
        }
        if (fault instanceof NotDirectoryException) {
            return "it is not a folder";
        }
        String said = fault instanceof FileSystemException system ? system.getReason() : fault.getMessage();
        return said == null || said.isBlank() ? "the system gave no reason" : said.replaceAll("\\p{Cntrl}", " ");
    }
}
