package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.answers.Model;
import boilwright.numerics.CancelToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The command rise, from its options to what it prints and writes. */
class RiseCommandTest {
    @TempDir
    Path folder;

    private Path csv;

    /** A leak of 0.3 mTorr/s beside surface gas, in mTorr, as a display of three figures shows it. */
    @BeforeEach
    void record() throws IOException {
        StringBuilder text = new StringBuilder("# turbo off\nt [s],p [mTorr]\n");
        for (int i = 0; i <= 40; i++) {
            double t = 15 * i;
            double p = 10 + 0.3 * t + 120 * (1 - Math.exp(-t / 100));
            text.append(String.format(Locale.ROOT, "%.0f,%.3g%n", t, p));
        }
        csv = Files.writeString(folder.resolve("run.csv"), text);
    }

    private CommandRun run(String... line) {
        return CommandRun.of(folder, Model.COMPUTING, new CancelToken(), line);
    }

    @Test
    void answersInText() {
        CommandRun run = run("rise", "--csv", csv.toString(), "--volume", "30 L");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .startsWith("run.csv: 41 readings in 10 min, 30.0 L shut off\n\nA steady leak of 0.0012")
                .contains("Torr L/s", "mbar L/s", "leak and surface gas", "Boilwright ");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    }

    /** 0.3 mTorr/s times 30 L is 9e-3 Torr L/s; a Torr is 101325/760 Pa. */
    @Test
    void answersInJson() {
        CommandRun run = run("rise", "--csv", csv.toString(), "--volume", "30 L", "--json");
        JsonNode tree = JsonMapper.shared().readTree(run.out());
        assertThat(tree.get("verdict").asString()).isEqualTo("mixed");
        double leak = tree.get("leak").get("value").asDouble();
        assertThat(leak / (0.3e-3 * 101325 / 760 * 0.03)).isCloseTo(1, within(0.01));
        assertThat(tree.get("leak").get("low").asDouble()).isLessThan(leak);
        assertThat(tree.get("leak").get("high").asDouble()).isGreaterThan(leak);
        for (String key : List.of("initialRate", "low", "high", "timeConstantS")) {
            assertThat(tree.get("surfaceGas").has(key)).as(key).isTrue();
        }
        for (String key : List.of("none", "leak", "surface-gas", "surface-gas-power-law", "mixed", "leastDifference")) {
            assertThat(tree.get("criterion").get(key).isNumber()).as(key).isTrue();
        }
        assertThat(tree.get("fit")).hasSize(41);
        for (String key : List.of("t", "p", "fitted")) {
            assertThat(tree.get("fit").get(40).has(key)).as(key).isTrue();
        }
        assertThat(tree.get("volume").asDouble()).isEqualTo(0.03);
        assertThat(tree.get("sentence").asString()).startsWith("A steady leak of");
        assertThat(tree.get("notes")).isNotEmpty();
    }

    @Test
    void theExampleOfTheGuideIsAMixture() {
        CommandRun run = run("rise", "--csv", "docs/user-guide/rise-example.csv", "--volume", "30 L", "--json");
        assertThat(run.code()).isZero();
        assertThat(JsonMapper.shared().readTree(run.out()).get("verdict").asString())
                .isEqualTo("mixed");
    }

    @Test
    void drawsThePicture() throws IOException {
        Path png = folder.resolve("run.png");
        CommandRun run = run("rise", "--csv", csv.toString(), "--volume", "30 L", "--png", png.toString());
        assertThat(run.code()).isZero();
        assertThat(ImageIO.read(png.toFile()).getWidth()).isEqualTo(1200);
    }

    @Test
    void endsWithOneWhenUndecided() throws IOException {
        Files.writeString(csv, "t_min,p_Pa\n0,5\n1,5\n2,5.01\n3,4.99\n4,5\n5,5\n6,5\n7,5.01\n");
        CommandRun text = run("rise", "--csv", csv.toString(), "--volume", "30 L");
        assertThat(text.code()).isEqualTo(1);
        assertThat(text.out()).contains("No rise stands out");
        CommandRun json = run("rise", "--csv", csv.toString(), "--volume", "30 L", "--json");
        JsonNode tree = JsonMapper.shared().readTree(json.out());
        assertThat(tree.get("verdict").asString()).isEqualTo("undecided");
        assertThat(tree.get("leak").isNull()).isTrue();
        assertThat(tree.get("surfaceGas").isNull()).isTrue();
    }

    @Test
    void refusesAndLeavesNothingBehind() throws IOException {
        Path png = folder.resolve("run.png");
        for (String[] line : new String[][] {
            {"rise", "--csv", csv.toString()},
            {"rise", "--volume", "30 L"},
            {"rise", "--csv", folder.resolve("none.csv").toString(), "--volume", "30 L", "--png", png.toString()},
            {"rise", "--csv", csv.toString(), "--volume", "30 m3", "--png", png.toString()},
            {"rise", "--csv", csv.toString(), "--volume", "30 L", "--accept", "p", "--png", png.toString()},
            {"rise", "--csv", csv.toString(), "--volume", "30 L", "--png", csv.toString()},
        }) {
            CommandRun run = run(line);
            assertThat(run.code()).as(String.join(" ", line)).isEqualTo(2);
            assertThat(run.out()).isEmpty();
            assertThat(run.err().lines()).isNotEmpty().allMatch(said -> said.startsWith("boilwright: "));
        }
        assertThat(png).doesNotExist();
        assertThat(Files.readString(csv)).contains("mTorr");
    }

    @Test
    void saysWhenThePictureCanNotBeWritten() {
        String nowhere = folder.resolve("none").resolve("run.png").toString();
        CommandRun run = run("rise", "--csv", csv.toString(), "--volume", "30 L", "--png", nowhere);
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void helpSaysWhatTheExitCodesMean() {
        assertThat(run("rise", "--help").out()).contains("with 1 when it stays undecided", "--volume", "--accept");
    }
}
