package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.answers.Model;
import boilwright.answers.Stored;
import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.fluid.FluidLibrary;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.file.RigReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command that makes a rig of outside measurements, from the options to the file. */
class NewCommandTest {
    @TempDir
    Path folder;

    private Path out;

    @BeforeEach
    void nameTheFile() {
        out = folder.resolve("pump.json");
    }

    /** The neon workshop's pump as a person would measure it, with some options changed (NAME=VALUE, or NAME= for none). */
    private CommandRun run(Model model, String... changes) {
        List<String> line = new ArrayList<>(List.of(
                "--material=borosilicate",
                "--bore=75 mm",
                "--stages=3",
                "--column-height=250 mm",
                "--column-diameter=46 mm",
                "--boiler-diameter=160 mm",
                "--wall=2.2 mm",
                "--charge=150 mL",
                "--fluid=704-type",
                "--source=contact-plate",
                "--power=1.5 kW"));
        for (String change : changes) {
            String name = change.contains("=") ? change.substring(0, change.indexOf('=') + 1) : change;
            line.removeIf(option -> option.startsWith(name));
            if (!change.endsWith("=")) {
                line.add(change);
            }
        }
        line.add(0, "new");
        line.add(1, "--out=" + out);
        return CommandRun.of(folder, model, new CancelToken(), line.toArray(String[]::new));
    }

    private Rig written() {
        return RigReader.read(out, FluidLibrary.builtIn().ids(), Set.of());
    }

    @Test
    void writesARigSaysWhatWasGuessedAndWhichGuessMatters() {
        CommandRun run = run(Stored.MODEL, "--insulation=0 mm");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("75 mm borosilicate pump", "Guessed, not measured", "heatSource.limit = 450 degC")
                .contains("moves the heat margin most is\nheatSource.contactConductance")
                .contains("boilwright check " + out)
                .doesNotContain("boiler.insulationThickness");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100 || line.contains(out.toString()));
        assertThat(written().guesses()).contains("stages[2].throatGap").doesNotContain("body.innerDiameter");
    }

    @Test
    void theCheckOfItTellsOfItsGuesses() {
        run(Stored.MODEL);
        CommandRun check = CommandRun.of(folder, Stored.MODEL, new CancelToken(), "check", "--all", out.toString());
        assertThat(check.out()).contains("fields of this rig are guesses, not measurements");
        CommandRun ranked = CommandRun.of(
                folder, Stored.MODEL, new CancelToken(), "check", "--rank-guesses", "--json", out.toString());
        assertThat(ranked.out())
                .contains("moves the heat margin most is boiler.insulationThickness")
                .doesNotContain("--rank-guesses");
    }

    @Test
    void measuredThroatsAreKept() {
        CommandRun run = run(Stored.MODEL, "--throat-gap=0.6 mm,0.7 mm,0.8 mm");
        assertThat(run.code()).isZero();
        assertThat(written().stages()).extracting(s -> s.throatGapM()).containsExactly(6e-4, 7e-4, 8e-4);
        assertThat(written().guesses()).noneMatch(path -> path.endsWith("throatGap"));
    }

    @Test
    void theBodyMayBeMeasuredOutside() {
        assertThat(run(Stored.MODEL, "--bore=", "--body-diameter=79.4 mm").code())
                .isZero();
        assertThat(written().body().innerDiameterM()).isEqualTo(0.075);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--material=borosilicat; did you mean \"borosilicate\"",
                "--bore=75; has no unit",
                "--bore=75 m; did you mean 75 mm",
                "--bore=; Missing required",
                "--stages=0; accepted are 1 to 12",
                "--stages=; Missing required",
                "--column-diameter=80 mm; the column has an outer diameter of",
                "--charge=150 L; did you mean 150 mL",
                "--charge=12 L; --accept charge",
                "--fluid=704; did you mean \"704-type\"",
                "--source=clamped-heater; for glass take a heating-mantle",
                "--source=plate; accepted: \"gas-burner\"",
                "--power=1.5; has no unit",
                "--throat-gap=0.6 mm,0.7 mm; 2 throat gaps for 3 stages",
                "--throat-gap=0.6 mm,0.7 mm,80 mm; outer edge|wide inside",
                "--works-at=-5 W; accepted is",
                "--contact=machined-metal; Accepted: \"machined-metal\" for metal",
                "--body-diameter=80 mm; mutually exclusive",
                "--accept=chrage; Did you mean charge",
                "--bor=75 mm; Was --bore meant",
            })
    void refusesNonsenseInWordsAndWritesNothing(String change, String words) throws IOException {
        CommandRun run = run(Stored.MODEL, change);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).isNotEmpty().allMatch(said -> said.startsWith("boilwright: "));
        assertThat(Stream.of(words.split("\\|")))
                .anySatisfy(word -> assertThat(run.err()).contains(word));
        assertThat(left()).isEmpty();
    }

    @Test
    void tellsEveryFaultAtOnce() {
        CommandRun run = run(Stored.MODEL, "--bore=75", "--wall=2.2", "--charge=none", "--stages=x");
        assertThat(run.err().lines()).hasSize(4);
    }

    @Test
    void leavesAFileThatIsThereUnlessForced() throws IOException {
        Files.writeString(out, "mine");
        StoredModel stored = StoredModel.with(Margin.Status.HOLDS);
        CommandRun refused = run(stored);
        assertThat(refused.code()).isEqualTo(2);
        assertThat(refused.err()).contains("pump.json is there already", "--force");
        assertThat(out).hasContent("mine");
        assertThat(stored.asked()).isZero();
        assertThat(run(Stored.MODEL, "--force").code()).isZero();
        assertThat(written().stages()).hasSize(3);
        assertThat(left()).containsExactly("pump.json");
    }

    @Test
    void looksAtTheFileBeforeTheComputation() {
        out = folder.resolve("no-such-folder").resolve("pump.json");
        StoredModel stored = StoredModel.with(Margin.Status.HOLDS);
        CommandRun run = run(stored);
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.err()).contains(out.toString());
        assertThat(stored.asked()).isZero();
    }

    @Test
    void endsWithThreeWhenTheModelFindsNoThroats() throws IOException {
        CommandRun run =
                run(StoredModel.failing(new ComputationException(Message.of(MessageKey.JET_MODES_NOT_SETTLED, "20"))));
        assertThat(run.code()).isEqualTo(3);
        assertThat(left()).isEmpty();
    }

    @Test
    void stopsWhenAsked() throws IOException {
        CancelToken cancel = new CancelToken();
        cancel.cancel();
        CommandRun run = CommandRun.of(
                folder,
                Model.COMPUTING,
                cancel,
                "new --out %s --material stainless --stages 2 --charge 60mL --fluid 704-type --source gas-burner"
                        .formatted(out)
                        .concat(" --bore 50mm --column-height 200mm --column-diameter 30mm --boiler-diameter 60mm")
                        .concat(" --wall 2mm --power 800W")
                        .split(" "));
        assertThat(run.code()).isEqualTo(130);
        assertThat(left()).isEmpty();
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
