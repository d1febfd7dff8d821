package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.answers.Model;
import boilwright.answers.Stored;
import boilwright.numerics.CancelToken;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands size, compare and fluids --for, from their options to what they print. */
class ChoiceCommandsTest {
    private static final String OWN = """
            { "format": 1, "sources": [ { "id": "mine", "title": "my burner", "heatSource": {
              "kind": "gas-burner", "ratedPower": "1.8 kW",
              "cartridge": { "fuelMass": "220 g", "metalMass": "100 g", "airConductance": "0.3 W/K" } } } ] }
            """;

    @TempDir
    Path folder;

    static List<String> demos() {
        return Counts.firstOf("neon-workshop", "mirror-club", "teaching-lab");
    }

    private CommandRun run(String... line) {
        return CommandRun.of(folder, Stored.MODEL, new CancelToken(), line);
    }

    private static JsonNode json(CommandRun run) {
        return JsonMapper.builder().build().readTree(run.out());
    }

    private static void isAPage(CommandRun run) {
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(run.out()).contains("CAUTION", "Local codes", "Boilwright ");
    }

    @ParameterizedTest
    @MethodSource("demos")
    void sizePrintsAPageAndTheSameAsJson(String demo) {
        CommandRun page = run("size", "demo:" + demo, "--margin", "1.0");
        isAPage(page);
        CommandRun answer = run("size", "demo:" + demo, "--margin", "1.0", "--json");
        assertThat(answer.code()).isEqualTo(page.code());
        JsonNode json = json(answer);
        assertThat(json.at("/margin").doubleValue()).isEqualTo(1);
        assertThat(json.at("/least").size()).isGreaterThanOrEqualTo(4);
        assertThat(json.at("/curves/need").size()).isGreaterThan(10);
        assertThat(json.at("/window/lowW").isNull())
                .isEqualTo(!json.at("/window/isOpen").booleanValue());
        assertThat(page.out())
                .contains(json.at("/window/sentence").stringValue().substring(0, 20));
    }

    /** Exit code 1: the source does not give the margin asked for; 0: it does. */
    @Test
    void sizeSaysByItsExitCodeWhetherItIsEnough() {
        assertThat(run("size", "demo:mirror-club").code()).isEqualTo(ExitCode.HOLDS);
        assertThat(run("size", "demo:mirror-club", "--margin", "2").code()).isEqualTo(ExitCode.FAILS);
        assertThat(run("size", "demo:neon-workshop").code()).isEqualTo(ExitCode.FAILS);
        assertThat(run("size", "demo:mirror-club", "--margin", "125 %").out())
                .isEqualTo(run("size", "demo:mirror-club").out());
    }

    /** The library and one's own beside the hot plate of the workshop. */
    private CommandRun compare(String... options) throws IOException {
        Path own = Files.writeString(folder.resolve("own.json"), OWN);
        List<String> line =
                new ArrayList<>(List.of("compare", "--all", "demo:neon-workshop", "--sources", own.toString()));
        line.addAll(List.of("--threads", "2", "--air-changes", "2"));
        line.addAll(List.of(options));
        return run(line.toArray(String[]::new));
    }

    @Test
    void comparePutsOnesOwnBesideTheLibraryAndWritesTableAndPicture() throws IOException {
        Path csv = folder.resolve("rows.csv");
        Path png = folder.resolve("curves.png");
        CommandRun page = compare("--csv", csv.toString(), "--png", png.toString());
        isAPage(page);
        assertThat(page.code()).isEqualTo(ExitCode.HOLDS);
        assertThat(page.out()).contains("mine, my burner", "> ", "Carbon monoxide", "ppm", "clamped-800");
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0)).startsWith("id,title,state,recommended,ratedPowerW");
        assertThat(lines.get(1)).startsWith("present,");
        assertThat(lines.get(2)).startsWith("mine,my burner,");
        assertThat(lines).filteredOn(line -> line.contains(",true,")).hasSize(1);
        var picture = ImageIO.read(new ByteArrayInputStream(Files.readAllBytes(png)));
        assertThat(picture.getWidth()).isEqualTo(1400);
    }

    @Test
    void compareAsJsonNamesTheRecommendedAndEachLimit() throws IOException {
        JsonNode json = json(compare("--json"));
        assertThat(json.at("/recommendedId").stringValue()).isEqualTo("burner-1000");
        assertThat(json.at("/sources/0/id").stringValue()).isEqualTo("present");
        assertThat(json.at("/sources/0/limit").stringValue()).isEqualTo("contact");
        assertThat(json.at("/carbonMonoxide/highSteadyPpm").doubleValue()).isCloseTo(140, within(1e-9));
        assertThat(json.at("/needs").size()).isEqualTo(3);
        assertThat(json.at("/sources").valueStream())
                .allMatch(row -> row.at("/curves/delivered").size() > 10);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void fluidsForARigShowsEveryFluid(String demo) {
        CommandRun page = run("fluids", "--for", "demo:" + demo);
        assertThat(page.code()).isEqualTo(ExitCode.HOLDS);
        assertThat(page.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(page.out()).contains("> 704-type", "mercury", "least charge", "poisonous");
        JsonNode json = json(run("fluids", "--for", "demo:" + demo, "--json", "705-type"));
        assertThat(json.at("/fluids").size()).isEqualTo(2);
        assertThat(json.at("/fluids/1/liquidTemperatureK").doubleValue())
                .isGreaterThan(json.at("/fluids/0/liquidTemperatureK").doubleValue() + 10);
        assertThat(json.at("/fluids/0/leastChargeM3").doubleValue()).isBetween(5e-6, 450e-6);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "size demo:mirror-club --margin 0; --margin",
                "size demo:mirror-club --margin lots; --margin",
                "compare demo:mirror-club --room-volume 3kg; a volume is wanted",
                "compare demo:mirror-club --air-changes 0; --air-changes",
                "compare demo:mirror-club --threads 0; --threads",
                "compare demo:mirror-club --session never; --session",
                "compare demo:mirror-club --sources nowhere.json; no such file",
                "fluids --for demo:nowhere; no such demo",
                "fluids nectar --for demo:mirror-club; nectar",
                "fluids --accept charge; --accept"
            })
    void whatMakesNoSenseIsRefusedAtOnce(String line, String words) {
        CommandRun run = run(line.split(" "));
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.err()).contains(words);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void theFileOfSourcesIsNeverWrittenOver() throws IOException {
        Path own = Files.writeString(folder.resolve("own.json"), OWN);
        CommandRun run = run("compare", "demo:mirror-club", "--sources", own.toString(), "--csv", own.toString());
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(Files.readString(own)).isEqualTo(OWN);
    }

    @Test
    void anUnusualFigureOfASourceCanBeMeant() throws IOException {
        Path own = Files.writeString(folder.resolve("own.json"), OWN.replace("1.8 kW", "2.2 W"));
        String field = "sources[0].heatSource.ratedPower";
        CommandRun refused = run("compare", "demo:mirror-club", "--sources", own.toString());
        assertThat(refused.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(refused.err()).contains("own.json", field, "--accept");
        assertThat(run("compare", "--all", "demo:neon-workshop", "--sources", own.toString(), "--accept", field)
                        .out())
                .contains("mine, my burner");
    }

    @Test
    void itStopsWhenAsked() {
        CancelToken stop = new CancelToken();
        stop.cancel();
        for (String command : List.of("size", "compare")) {
            assertThat(CommandRun.of(folder, Model.COMPUTING, stop, command, "demo:mirror-club")
                            .code())
                    .isEqualTo(ExitCode.CANCELLED);
        }
    }
}
