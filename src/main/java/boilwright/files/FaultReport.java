package boilwright.files;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;

/** The file that keeps what a person need not see when the program itself fails. */
public final class FaultReport {
    private static final int MOST = 1000;

    private FaultReport() {}

    /**
     * Writes the report into the first of some folders that takes it.
     *
     * @param fault what failed
     * @param arguments what the program was asked to do
     * @param folders where the report may go, the best first
     * @return what to tell the person
     */
    public static Message write(Throwable fault, List<String> arguments, List<Path> folders) {
        String text = text(fault, arguments);
        String what = summary(fault);
        for (Path folder : folders) {
            Optional<Path> file = write(text, folder);
            if (file.isPresent()) {
                return Message.of(
                        MessageKey.INTERNAL_FAULT_REPORTED,
                        what,
                        file.get().toAbsolutePath().toString());
            }
        }
        return Message.of(MessageKey.INTERNAL_FAULT, what);
    }

    private static Optional<Path> write(String text, Path folder) {
        for (int number = 1; number <= MOST; number++) {
            Path file = folder.resolve("boilwright-fault-" + number + ".txt");
            try {
                return Optional.of(Files.writeString(file, text, StandardOpenOption.CREATE_NEW));
            } catch (FileAlreadyExistsException e) {
                // An earlier report stays; the next number may be free.
            } catch (IOException e) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private static String summary(Throwable fault) {
        String first = fault.getMessage() == null
                ? ""
                : fault.getMessage().lines().findFirst().orElse("");
        String kind = fault.getClass().getSimpleName();
        return first.isEmpty() ? kind : kind + ", " + first;
    }

    private static String text(Throwable fault, List<String> arguments) {
        StringWriter text = new StringWriter();
        PrintWriter writer = new PrintWriter(text);
        writer.println("Boilwright " + ProgramVersion.current());
        writer.println("Java " + System.getProperty("java.version") + ", " + System.getProperty("os.name") + " "
                + System.getProperty("os.arch"));
        writer.println("Arguments: " + String.join(" ", arguments));
        writer.println();
        fault.printStackTrace(writer);
        writer.flush();
        return text.toString();
    }
}
