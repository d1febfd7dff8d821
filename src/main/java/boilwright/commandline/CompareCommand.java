package boilwright.commandline;

import boilwright.answers.Asked;
import boilwright.answers.Model;
import boilwright.choice.CompareAnswer;
import boilwright.choice.CompareQuestion;
import boilwright.choice.SourceRow;
import boilwright.numerics.CancelToken;
import boilwright.numerics.ProgressSink;
import boilwright.report.CompareJson;
import boilwright.report.CompareText;
import boilwright.report.HeatPicture;
import boilwright.report.HeatSpread;
import boilwright.rig.file.SourceLibrary;
import boilwright.spread.Bands;
import boilwright.spread.SpreadScope;
import boilwright.units.Dimension;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Heat sources side by side on one rig. */
@Command(
        name = "compare",
        description =
                "The rig's own heat source beside those of the library and your own: which drives every jet, what limits"
                        + " the others, what a session takes. --png draws sources and pump against wall temperature.",
        sortOptions = false)
final class CompareCommand extends RigCommand {
    private static final String OF_SOURCES = "sources[";

    @Option(
            names = "--sources",
            paramLabel = "FILE",
            description = "Compare the heat sources of this file too; they pass the same checks as the library's.")
    private Path sources;

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

    @Mixin
    private AllOption everything;

    @Mixin
    private BandsOption bandsOption;

    CompareCommand(Terminal terminal, Model model) {
        super(terminal, model);
    }

    @Override
    void checkOptions() {
        room();
        threads();
        bandsOption.check();
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

    private CompareQuestion.RoomAir room() {
        return new CompareQuestion.RoomAir(
                NumberOption.read("--room-volume", room, Dimension.VOLUME, 1, 1e5),
                NumberOption.read("--air-changes", airChanges, Dimension.FRACTION, 0.05, 100));
    }

    private int threads() {
        return (int) NumberOption.read("--threads", Integer.toString(threads), Dimension.FRACTION, 1, 256);
    }

    @Override
    Answer answer(Asked asked, Model model, CancelToken cancel, ProgressSink progress) {
        SourceLibrary library = SourceLibrary.builtIn();
        SourceLibrary all = sources == null ? library : library.withFile(sources, acceptedOfSources);
        CompareAnswer answer =
                model.answer(new CompareQuestion(asked, all.sources(), room(), threads()), cancel, progress);
        Map<String, Bands> bands = new LinkedHashMap<>();
        for (SourceRow row : answer.rows()) {
            Bands one = bandsOption.bands(row.check().asked(), model, SpreadScope.REST, cancel, progress);
            if (!one.isEmpty()) {
                bands.put(row.id(), one);
            }
        }
        HeatSpread spread = new HeatSpread(bands);
        return new Answer(
                () -> everything.isGiven() ? CompareText.write(answer, spread) : CompareText.brief(answer, spread),
                () -> CompareJson.write(answer, spread),
                () -> CompareText.csv(answer),
                name -> HeatPicture.png(name, answer),
                answer.recommendedId().isEmpty(),
                false);
    }
}
