package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import boilwright.answers.Stored;
import boilwright.numerics.CancelToken;
import boilwright.thermal.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The commands water and drill, from their options to what they print. */
class CoolingCommandsTest {
    @TempDir
    Path folder;

    static List<String> demos() {
        return Counts.firstOf("mirror-club", "teaching-lab", "neon-workshop");
    }

    private CommandRun run(String... line) {
        return CommandRun.of(folder, Stored.MODEL, new CancelToken(), line);
    }

    @ParameterizedTest
    @MethodSource("demos")
    void waterAnswersEveryDemoInTextJsonAndPicture(String demo) throws IOException {
        Path png = folder.resolve("curves.png");
        CommandRun text = run("water", "demo:" + demo, "--png", png.toString());
        assertThat(text.err()).isEmpty();
        assertThat(text.out()).contains("Along the water, at rest", "What it needs", "CAUTION");
        assertThat(Files.size(png)).isGreaterThan(5000);
        CommandRun json = run("water", "demo:" + demo, "--json");
        JsonNode tree = JsonMapper.shared().readTree(json.out());
        for (String key : List.of(
                "operatingPoint", "elements", "leastFlow", "governingLimit", "smallestChiller", "tank", "orders")) {
            assertThat(tree.has(key)).as(key).isTrue();
        }
        for (String key :
                List.of("name", "inletK", "outletK", "flowKgPerS", "heatW", "hWPerM2K", "reynolds", "pressureDropPa")) {
            assertThat(tree.get("elements").get(0).has(key)).as(key).isTrue();
        }
        assertThat(json.code()).isEqualTo(text.code());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void drillPlaysTheWaterThroughForEveryDemo(String demo) {
        CommandRun text = run("drill", "demo:" + demo, "--fault", "water");
        assertThat(text.err()).isEmpty();
        assertThat(text.out()).contains("heat left on", "cut at once", "CAUTION", "burst");
        JsonNode tree = JsonMapper.shared()
                .readTree(
                        run("drill", "demo:" + demo, "--fault=water", "--json").out());
        assertThat(tree.get("cases").size()).isEqualTo(tree.get("cutByItselfS").isNull() ? 3 : 4);
        JsonNode on = tree.get("cases").get(0).get("limits");
        JsonNode now = tree.get("cases").get(2).get("limits");
        for (int i = 0; i < on.size(); i++) {
            assertThat(seconds(on.get(i))).isLessThanOrEqualTo(seconds(now.get(i)) + 0.1);
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void drillPlaysEveryFaultOfEveryDemoAndListsItsInterlocks(String demo) {
        Path csv = folder.resolve("drills.csv");
        CommandRun text = run("drill", "demo:" + demo, "--all", "--csv", csv.toString());
        assertThat(text.err()).isEmpty();
        assertThat(csv).content().startsWith("fault,firstHarmS").contains("\nmains,");
        assertThat(text.code()).isEqualTo(ExitCode.FAILS);
        assertThat(text.out())
                .contains(
                        "water stops", "mains fail", "heat sticks", "backing pump stops", "air comes in", "Interlocks");
        JsonNode tree = JsonMapper.shared()
                .readTree(run("drill", "demo:" + demo, "--all", "--json").out());
        assertThat(tree.get("drills").size() + tree.get("notPlayed").size()).isEqualTo(Fault.values().length);
        for (JsonNode drill : tree.get("drills")) {
            assertThat(drill.get("doFirst").size()).isGreaterThan(1);
            assertThat(drill.get("harmed").asBoolean())
                    .as(drill.get("fault").asString())
                    .isEqualTo(harmed(drill.get("cases").get(drill.get("cases").size() == 4 ? 3 : 0)));
        }
        assertThat(tree.get("interlocks").size()).isGreaterThan(2);
    }

    private static boolean harmed(JsonNode run) {
        for (JsonNode limit : run.get("limits")) {
            if (!limit.get("id").asString().equals("touch")
                    && !limit.get("passedS").isNull()) {
                return true;
            }
        }
        return false;
    }

    private static double seconds(JsonNode limit) {
        JsonNode passed = limit.get("passedS");
        return passed.isNull() ? Double.POSITIVE_INFINITY : passed.asDouble();
    }

    @ParameterizedTest
    @CsvSource({
        "--fault=cartridge-empty, burns no gas from a cartridge",
        "--fault=fan, no fan",
        "--cut-after=2 min, either --fault",
        "--all --fault=water, found both",
        "--fault=wather, no drill for",
        "--fault=water --at=soon, is not understood",
        "--fault=water --at=-3 min, from 0 s to",
        "--fault=water --cut-after=5 m, is not understood",
        "--fault=water --cut-after=900 h, from 0 s to"
    })
    void drillRefusesWhatItCanNotPlay(String options, String words) {
        String[] parts = options.split(" (?=--)");
        String[] line = new String[2 + parts.length];
        line[0] = "drill";
        line[1] = "demo:mirror-club";
        System.arraycopy(parts, 0, line, 2, parts.length);
        CommandRun run = run(line);
        assertThat(run.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words);
    }

    @Test
    void aMissingFileOrAWrongSessionIsOneMessage() {
        assertThat(run("water", folder.resolve("none.json").toString()).code()).isEqualTo(ExitCode.REFUSED);
        CommandRun session = run("water", "demo:mirror-club", "--session", "2");
        assertThat(session.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(session.err()).contains("--session");
        assertThat(session.out()).isEmpty();
    }
}
