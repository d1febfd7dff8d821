package boilwright.commandline;

import boilwright.answers.Model;
import boilwright.answers.RiseQuestion;
import boilwright.files.AtomicFile;
import boilwright.numerics.ProgressSink;
import boilwright.report.RiseJson;
import boilwright.report.RisePicture;
import boilwright.report.RiseText;
import boilwright.rise.Quantity;
import boilwright.rise.RiseAnswer;
import boilwright.rise.RiseFile;
import boilwright.rise.RiseRecord;
import boilwright.rise.RiseVolume;
import boilwright.rise.Verdict;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The pressure-rise test. */
@Command(
        name = "rise",
        description = {
            "Does a chamber that is shut off leak, or do its surfaces give off gas? Reads the pressures that were noted after the"
                    + " valve was closed.",
            "The file is a table with a column of times and one of pressures, their units in the names of the columns, such as"
                    + " time_s,pressure_Pa. It needs no rig.",
            "Ends with 0 when the record is decided (leak, surface gas or both), with 1 when it stays undecided."
        },
        sortOptions = false)
final class RiseCommand implements Callable<Integer> {
    private final Terminal terminal;
    private final Model model;

    @Option(names = "--csv", required = true, paramLabel = "FILE", description = "The record to read.")
    private Path csv;

    @Option(
            names = "--volume",
            required = true,
            paramLabel = "VOLUME",
            description = "Volume that was shut off, such as \"30 L\".")
    private String volume;

    @Option(
            names = "--accept",
            paramLabel = "WORD",
            description = "Go on although this looks like a slip: time, pressure or volume; repeat it for several.")
    private List<String> accepted = List.of();

    @Option(names = "--json", description = "Print the answer as JSON, for other programs.")
    private boolean json;

    @Option(names = "--png", paramLabel = "FILE", description = "Draw readings and curve to this file.")
    private Path png;

    @Mixin
    private HelpOption help;

    RiseCommand(Terminal terminal, Model model) {
        this.terminal = terminal;
        this.model = model;
    }

    @Override
    public Integer call() {
        Set<String> meant = new LinkedHashSet<>(accepted);
        Quantity.checkAccepted(meant);
        Outputs outputs = new Outputs(null, png);
        outputs.refuseOverlap(Optional.of(csv));
        double volumeM3 = RiseVolume.read(volume, meant);
        RiseRecord record = RiseFile.read(csv, meant);
        outputs.requireWritable();
        terminal.cancel().check();
        RiseAnswer answer = model.answer(new RiseQuestion(record, volumeM3), terminal.cancel(), ProgressSink.NONE);
        String name = csv.getFileName().toString();
        String printed = json ? RiseJson.write(answer) : RiseText.write(name, answer);
        byte[] picture = png == null ? null : RisePicture.png(name, answer);
        terminal.cancel().check();
        if (picture != null) {
            AtomicFile.write(png, picture);
        }
        terminal.answer(printed);
        return answer.verdict() == Verdict.UNDECIDED ? ExitCode.FAILS : ExitCode.HOLDS;
    }
}
