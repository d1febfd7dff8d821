package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Stored;
import boilwright.numerics.CancelToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The command plan, from its options to the files it writes. */
class PlanCommandTest {
    private static final String CLUB = "demo:mirror-club";

    @TempDir
    Path folder;

    private CommandRun run(String... line) {
        return CommandRun.of(folder, Stored.MODEL, new CancelToken(), line);
    }

    @Test
    void printsStepsRulesAndCautions() {
        CommandRun run = run("plan", CLUB, "--all");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.HOLDS);
        assertThat(run.out())
                .contains("Start, h:mm:ss", "Stop, h:mm:ss", "Not by", "Basis: Common practice", "CAUTION", "kept");
    }

    @Test
    void timesOfTheStartComeWithTheirBands() {
        CommandRun run = run("plan", CLUB, "--all", "--spread", "20");
        assertThat(run.err()).isEmpty();
        Matcher band = Pattern.compile("\\((\\d+:\\d\\d:\\d\\d) +to +(\\d+:\\d\\d:\\d\\d)\\)")
                .matcher(run.out().replaceAll("\\s+", " "));
        int bands = 0;
        while (band.find()) {
            assertThat(band.group(1)).isLessThan(band.group(2));
            bands++;
        }
        assertThat(bands).as("gas out, first jet, top jet, every jet").isEqualTo(4);
        assertThat(run.out()).contains("20 samples");
    }

    @ParameterizedTest
    @ValueSource(strings = {"first", "normal", "standby", "quick-stop", "emergency"})
    void whatItWritesAsJsonItHoldsAgainstTheRules(String variant) throws IOException {
        CommandRun json = run("plan", CLUB, "--variant", variant, "--json");
        Path file = folder.resolve("plan.json");
        Files.writeString(file, json.out());
        CommandRun held = run("plan", CLUB, "--check", file.toString());
        assertThat(held.err()).isEmpty();
        assertThat(held.code()).as(held.out()).isEqualTo(ExitCode.HOLDS);
        assertThat(held.out()).contains("This plan breaks no rule.");
    }

    @Test
    void aStepTakenOutOfTheFileIsFoundWithRuleMomentAndValue() throws IOException {
        ObjectNode tree = (ObjectNode)
                JsonMapper.shared().readTree(run("plan", CLUB, "--json").out());
        ArrayNode steps = (ArrayNode) tree.get("steps");
        for (int i = steps.size() - 1; i >= 0; i--) {
            if (steps.get(i).get("do").asString().equals("cooling-on")) {
                steps.remove(i);
            }
        }
        Path file = folder.resolve("plan.json");
        Files.writeString(file, tree.toString());
        CommandRun text = run("plan", CLUB, "--check", file.toString());
        assertThat(text.code()).isEqualTo(ExitCode.FAILS);
        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("No heat without cooling that flows. Broken at", "0:10:00 after", "no flow, with 2.20 kW");
        JsonNode json = JsonMapper.shared()
                .readTree(
                        run("plan", CLUB, "--check", file.toString(), "--json").out());
        assertThat(json.get("safe").asBoolean()).isFalse();
        JsonNode first = json.get("rules").get(0);
        assertThat(first.get("id").asString()).isEqualTo("water-with-heat");
        assertThat(first.get("status").asString()).isEqualTo("broken");
        assertThat(first.get("atS").asDouble()).isEqualTo(600);
        assertThat(first.get("value").asString()).contains("2.20 kW");
    }

    @Test
    void writesSheetAndMarkdownTogether() throws IOException {
        Path pdf = folder.resolve("sheet.pdf");
        Path markdown = folder.resolve("sheet.md");
        CommandRun run =
                run("plan", CLUB, "--pdf", pdf.toString(), "--markdown", markdown.toString(), "--paper", "letter");
        assertThat(run.err()).isEmpty();
        assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1))
                .startsWith("%PDF");
        assertThat(Files.readString(markdown))
                .startsWith("# From cold to pumping to cold")
                .contains("- [ ]");
    }

    @Test
    void withoutASafePlanNoSheetIsWritten() {
        Path pdf = folder.resolve("sheet.pdf");
        CommandRun run = run("plan", "demo:neon-workshop", "--pdf", pdf.toString());
        assertThat(run.code()).isEqualTo(ExitCode.FAILS);
        assertThat(run.out().replaceAll("\\s+", " ")).contains("No safe plan", "hot plate");
        assertThat(run.err()).contains("sheet.pdf was not written");
        assertThat(pdf).doesNotExist();
    }

    @Test
    void refusesWhatMakesNoSense() throws IOException {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, run("plan", CLUB, "--json").out());
        assertRefused("accepted: first, normal", "--variant", "lazy");
        assertRefused("accepted: a4, letter", "--paper", "a5");
        assertRefused("is a plan for normal", "--check", file.toString(), "--variant", "standby");
        assertRefused("would overwrite", "--check", file.toString(), "--pdf", file.toString());
        assertRefused("name the same file", "--markdown", "x.md", "--pdf", "x.md");
        assertRefused("does not exist", "--check", folder.resolve("none.json").toString());
        Path nowhere = folder.resolve("none").resolve("x.pdf");
        CommandRun run = run("plan", CLUB, "--pdf", nowhere.toString());
        assertThat(run.code()).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(run.out()).isEmpty();
    }

    private void assertRefused(String words, String... options) {
        String[] line = new String[options.length + 2];
        line[0] = "plan";
        line[1] = CLUB;
        System.arraycopy(options, 0, line, 2, options.length);
        CommandRun run = run(line);
        assertThat(run.code()).as(words).isEqualTo(ExitCode.REFUSED);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words);
    }
}
