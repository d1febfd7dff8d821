package boilwright.commandline;

import boilwright.answers.Model;
import boilwright.numerics.CancelToken;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * One command line, run inside the test.
 *
 * @param code its exit code
 * @param out what it printed as its answer
 * @param err what else it said
 */
record CommandRun(int code, String out, String err) {
    static CommandRun of(Path folder, Model model, CancelToken cancel, String... arguments) {
        return of(folder, model, new RecordedWindow(), cancel, arguments);
    }

    static CommandRun of(Path folder, Model model, WindowSource window, CancelToken cancel, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                folder,
                false,
                cancel);
        int code = Boilwright.run(terminal, model, window, arguments);
        return new CommandRun(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
