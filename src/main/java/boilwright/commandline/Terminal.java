package boilwright.commandline;

import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.errors.OutputNotWrittenException;
import boilwright.numerics.CancelToken;
import java.io.PrintStream;
import java.nio.file.Path;

/**
 * Where a command runs: what it prints to, the folder it stands in and the person's wish to stop.
 *
 * @param out for answers
 * @param err for everything else
 * @param folder for the reports of faults
 * @param interactive whether a person watches the errors' stream
 * @param cancel raised when the person wants to stop
 */
record Terminal(PrintStream out, PrintStream err, Path folder, boolean interactive, CancelToken cancel) {
    /** Prints an answer. */
    void answer(String text) {
        out.print(text);
        out.flush();
        if (out.checkError()) {
            throw new OutputNotWrittenException(Message.of(MessageKey.ANSWER_NOT_PRINTED), null);
        }
    }

    /** Says something that is not the answer. */
    void say(Message message) {
        err.println("boilwright: " + message.text());
        err.flush();
    }
}
