package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.answers.SessionOutlook;
import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.RunPicture;
import boilwright.report.SeriesCsv;
import boilwright.rig.Rig;
import boilwright.thermal.RunResult;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A question about one rig: reads it, has it answered, and only then prints and writes. */
abstract class RigCommand implements Callable<Integer> {
    private static final String SESSION = "--session";

    private final Terminal terminal;
    private final Model model;

    @Parameters(paramLabel = "RIG", description = "A rig file, or demo:NAME, such as demo:neon-workshop.")
    private String rigName;

    @Mixin
    private SetOption set;

    @Option(
            names = SESSION,
            paramLabel = "TIME",
            description =
                    "Length of a session, from heat-on to heat-off: 1 min to 24 h; else that of the rig, which is 4 h when"
                            + " it says none. Tank, ice and cartridge are judged along it.")
    private String session;

    @Mixin
    private FluidsOption fluids;

    @Option(
            names = "--accept",
            paramLabel = "FIELD",
            description = "Go on although this field looks like a slip; repeat it for several fields.")
    private List<String> accepted = List.of();

    @Option(names = "--json", description = "Print the answer as JSON, for other programs.")
    private boolean json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description = "Write the answer's table to this file: the time line, or what was compared.")
    private Path csv;

    @Option(names = "--png", paramLabel = "FILE", description = "Draw the answer to this file.")
    private Path png;

    @Mixin
    private HelpOption help;

    RigCommand(Terminal terminal, Model model) {
        this.terminal = terminal;
        this.model = model;
    }

    /**
     * An answer in the forms in which it can be asked for.
     *
     * @param text for the person at the pump
     * @param json for other programs
     * @param csv what goes to the file named after --csv
     * @param picture what goes to the file named after --png, by the name of the rig
     * @param anyFails whether some margin fails
     * @param partial whether it was stopped on the way and still is an answer
     * @param sheets what goes to the files of {@link #moreOutputs}, by their options; none: nothing is written there
     */
    record Answer(
            Supplier<String> text,
            Supplier<String> json,
            Supplier<String> csv,
            Function<String, byte[]> picture,
            boolean anyFails,
            boolean partial,
            Map<String, Supplier<byte[]>> sheets) {
        /** Without further files. */
        Answer(
                Supplier<String> text,
                Supplier<String> json,
                Supplier<String> csv,
                Function<String, byte[]> picture,
                boolean anyFails,
                boolean partial) {
            this(text, json, csv, picture, anyFails, partial, Map.of());
        }

        /** The same with further files. */
        Answer with(Map<String, Supplier<byte[]>> more) {
            return new Answer(text, json, csv, picture, anyFails, partial, more);
        }

        /** Of one run, with a picture of its own. */
        Answer(
                Supplier<String> text,
                Supplier<String> json,
                RunResult run,
                Optional<Supplier<byte[]>> picture,
                boolean anyFails) {
            this(
                    text,
                    json,
                    () -> SeriesCsv.write(run.series()),
                    name -> picture.map(Supplier::get).orElseGet(() -> RunPicture.png(name, run)),
                    anyFails,
                    false);
        }

        /** Of one run, which is drawn. */
        Answer(Supplier<String> text, Supplier<String> json, RunResult run, boolean anyFails) {
            this(text, json, run, Optional.empty(), anyFails);
        }
    }

    /**
     * Looks at the command's own options before anything is read.
     *
     * @throws boilwright.errors.InputRefusedException when one of them makes no sense
     */
    void checkOptions() {}

    /** Another file that the command reads. */
    Optional<Path> otherFile() {
        return Optional.empty();
    }

    /** Further files that the command was asked to write, by their options. */
    Map<String, Path> moreOutputs() {
        return Map.of();
    }

    /** Which of the accepted fields are fields of the rig; a command that reads another file keeps those of that file. */
    List<String> acceptedOfRig(List<String> acceptedFields) {
        return acceptedFields;
    }

    /** Has the question answered. */
    abstract Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress);

    @Override
    public Integer call() {
        checkOptions();
        OptionalDouble sessionS = session == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        TimeOption.read(SESSION, session, SessionOutlook.SHORTEST_S, SessionOutlook.LONGEST_S));
        FluidLibrary library = fluids.library();
        RigChoice choice = new RigChoice(rigName);
        Outputs outputs = new Outputs(csv, png, moreOutputs());
        outputs.refuseOverlap(choice.file());
        outputs.refuseOverlap(otherFile());
        List<String> acceptedFields = acceptedOfRig(accepted);
        Rig rig = set.applied(choice.read(library, acceptedFields), library, acceptedFields);
        Asked asked = Asked.of(sessionS.isPresent() ? rig.withSession(sessionS.getAsDouble()) : rig, library);
        outputs.requireWritable();
        Answer answer = compute(asked);
        String printed = json ? answer.json().get() : answer.text().get();
        outputs.write(answer.csv(), () -> answer.picture().apply(rig.name()), answer.sheets());
        terminal.answer(printed);
        if (answer.partial()) {
            return ExitCode.CANCELLED;
        }
        return answer.anyFails() ? ExitCode.FAILS : ExitCode.HOLDS;
    }

    private Answer compute(Asked asked) {
        CancelToken cancel = terminal.cancel();
        cancel.check();
        Answer answer;
        if (terminal.interactive()) {
            try (ProgressLine line = new ProgressLine(terminal.err(), System::nanoTime)) {
                answer = answer(asked, model, cancel, line);
            }
        } else {
            answer = answer(asked, model, cancel, ProgressSink.NONE);
        }
        if (!answer.partial()) {
            cancel.check();
        }
        return answer;
    }
}
