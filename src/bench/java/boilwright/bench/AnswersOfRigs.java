package boilwright.bench;

import boilwright.commandline.Boilwright;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Permission;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Prints the JSON of every command for many rigs, one process for all of them, so that two builds can be compared byte by byte. It knows
 * only the program's entry point and therefore runs with the jars of any build; {@code same-answers.sh} beside the sources calls it.
 *
 * <p>Arguments: rig files, folders of them, or {@code demo:NAME}. Needs {@code -Djava.security.manager=allow}, by which the program's own
 * exit is noticed.
 */
public final class AnswersOfRigs {
    private static final List<List<String>> COMMANDS = List.of(
            List.of("check", "--rank-guesses"),
            List.of("warmup"),
            List.of("cooldown"),
            List.of("water"),
            List.of("vacuum"),
            List.of("plan"),
            List.of("size"),
            List.of("spread", "--steady", "--runs", "20", "--threads", "1"),
            List.of("fluids", "--for"),
            List.of("drill", "--all"),
            List.of("compare"));

    private AnswersOfRigs() {}

    /** The program's exit, which ends one answer here and not the process. */
    private static final class Exit extends SecurityException {
        private static final long serialVersionUID = 1;
        private final int code;

        Exit(int code) {
            this.code = code;
        }
    }

    @SuppressWarnings("removal")
    public static void main(String[] arguments) throws IOException {
        System.setSecurityManager(new SecurityManager() {
            @Override
            public void checkExit(int code) {
                throw new Exit(code);
            }

            @Override
            public void checkPermission(Permission permission) {}
        });
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        List<String> rigs = rigs(arguments);
        // the quick commands first: a comparison that is stopped on the way has seen every rig
        for (List<String> command : COMMANDS) {
            for (String rig : rigs) {
                List<String> line = new ArrayList<>(command);
                line.add(rig);
                line.add("--json");
                out.println("=== " + name(rig) + ": " + String.join(" ", command));
                out.println("=== exit " + run(line));
            }
        }
    }

    private static int run(List<String> line) {
        try {
            Boilwright.main(line.toArray(String[]::new));
            throw new IllegalStateException("the program did not end");
        } catch (Exit exit) {
            return exit.code;
        }
    }

    private static String name(String rig) {
        return rig.startsWith("demo:") ? rig : Path.of(rig).getFileName().toString();
    }

    private static List<String> rigs(String[] arguments) throws IOException {
        List<String> rigs = new ArrayList<>();
        for (String argument : arguments) {
            if (argument.startsWith("demo:") || !Files.isDirectory(Path.of(argument))) {
                rigs.add(argument);
                continue;
            }
            try (Stream<Path> files = Files.list(Path.of(argument))) {
                files.map(Path::toString)
                        .filter(f -> f.endsWith(".json"))
                        .sorted()
                        .forEach(rigs::add);
            }
        }
        return rigs;
    }
}
