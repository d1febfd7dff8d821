package boilwright.commandline;

import boilwright.choice.CompareAnswer;
import boilwright.choice.CompareQuestion;
import boilwright.fluid.WorkingFluid;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CompareJson;
import boilwright.report.CompareText;
import boilwright.report.HeatPicture;
import boilwright.rig.Rig;
import boilwright.rig.file.SourceLibrary;
import boilwright.units.Dimension;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Heat sources side by side on one rig. */
@Command(
        name = "compare",
        description =
                "The rig's own heat source beside those of the library and your own: which drives every jet, what limits"
                        + " the others, what a session takes. --png draws sources and pump against wall temperature.",
        sortOptions = false)
final class CompareCommand extends RigCommand {
    private static final double LONGEST_SESSION_S = 48 * 3600;
    private static final String OF_SOURCES = "sources[";

    @Option(
            names = "--sources",
            paramLabel = "FILE",
            description = "Compare the heat sources of this file too; they pass the same checks as the library's.")
    private Path sources;

    @Option(
            names = "--session",
            paramLabel = "TIME",
            defaultValue = "2 h",
            description = "Pumping in one session after the warm-up; 2 h unless given.")
    private String session;

    @Option(
            names = "--room-volume",
            paramLabel = "VOLUME",
            defaultValue = "30 m3",
            description = "Volume of the room, for carbon monoxide; 30 m3 unless given.")
    private String room;

    @Option(
            names = "--air-changes",
            paramLabel = "N",
            defaultValue = "0.5",
            description = "Air changes of the room in an hour; 0.5 unless given, a closed room.")
    private String airChanges;

    @Option(
            names = "--threads",
            paramLabel = "T",
            description = "How many sources are worked out at once; the answer is the same for any number.")
    private int threads = Runtime.getRuntime().availableProcessors();

    private Set<String> acceptedOfSources = Set.of();

    CompareCommand(Terminal terminal) {
        super(terminal);
    }

    @Override
    void checkOptions() {
        settings();
    }

    @Override
    Optional<Path> otherFile() {
        return Optional.ofNullable(sources);
    }

    @Override
    List<String> acceptedOfRig(List<String> accepted) {
        if (sources == null) {
            return accepted;
        }
        acceptedOfSources =
                accepted.stream().filter(f -> f.startsWith(OF_SOURCES)).collect(Collectors.toSet());
        return accepted.stream().filter(f -> !f.startsWith(OF_SOURCES)).toList();
    }

    private CompareQuestion.Settings settings() {
        return new CompareQuestion.Settings(
                TimeOption.read("--session", session, LONGEST_SESSION_S),
                NumberOption.read("--room-volume", room, Dimension.VOLUME, 1, 1e5),
                NumberOption.read("--air-changes", airChanges, Dimension.FRACTION, 0.05, 100),
                (int) NumberOption.read("--threads", Integer.toString(threads), Dimension.FRACTION, 1, 256));
    }

    @Override
    Answer answer(Rig rig, WorkingFluid fluid, String dataVersion, CancelToken cancel, ProgressSink progress) {
        SourceLibrary library = SourceLibrary.builtIn();
        SourceLibrary all = sources == null ? library : library.withFile(sources, acceptedOfSources);
        CompareAnswer answer =
                CompareQuestion.ask(rig, fluid, dataVersion, all.sources(), settings(), cancel, progress);
        return new Answer(
                () -> CompareText.write(answer),
                () -> CompareJson.write(answer),
                () -> CompareText.csv(answer),
                name -> HeatPicture.png(name, answer),
                answer.recommendedId().isEmpty(),
                false);
    }
}
