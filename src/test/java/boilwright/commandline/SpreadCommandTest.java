package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.answers.Stored;
import boilwright.numerics.CancelToken;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SpreadCommandTest {
    private static final String DEMO = "demo:teaching-lab";

    @TempDir
    Path folder;

    private final StoredModel source = StoredModel.with(Margin.Status.HOLDS);

    private CommandRun run(String... arguments) {
        return CommandRun.of(folder, source, new CancelToken(), arguments);
    }

    /** The same few samples at rest as JSON. */
    private CommandRun steady(String... options) {
        List<String> line = new ArrayList<>(List.of("spread", DEMO, "--runs", "20", "--steady", "--json"));
        line.addAll(List.of(options));
        return run(line.toArray(String[]::new));
    }

    private static JsonNode json(CommandRun run) {
        return JsonMapper.shared().readTree(run.out());
    }

    @Test
    void oneThreadAndTwoPrintTheSame() {
        CommandRun one = steady("--seed", "7", "--threads", "1");
        assertThat(one.code()).as(one.err()).isZero();
        assertThat(steady("--seed", "7", "--threads", "2").out()).isEqualTo(one.out());
        assertThat(steady("--seed", "8").out()).isNotEqualTo(one.out());
    }

    @Test
    void jsonHasMarginsEventsInputsAndWhatWasLeftOut() {
        JsonNode json =
                json(CommandRun.of(folder, Stored.MODEL, new CancelToken(), "spread", DEMO, "--runs", "20", "--json"));
        assertThat(json.propertyNames())
                .contains("format", "verdict", "seed", "samplesDone", "chanceOfAnyFailing", "measureFirst", "rejected");
        assertThat(json.get("margins").get(0).propertyNames())
                .contains("id", "unit", "value", "valueLow", "valueMedian", "valueHigh", "ratioLow", "ratioHigh")
                .contains("chanceOfFailing", "chanceOfFailingLow", "chanceOfFailingHigh", "shares");
        assertThat(json.get("events").get(0).propertyNames())
                .contains("id", "stage", "timeS", "timeSLow", "timeSMedian", "timeSHigh", "samplesNever");
        assertThat(json.get("inputs").get(0).propertyNames())
                .contains("id", "title", "shape", "nominal", "low", "high", "unit", "source");
        assertThat(json.toString()).doesNotContain("threads");
    }

    @Test
    void textTableAndPictureAreWritten() throws Exception {
        Path csv = folder.resolve("a.csv");
        Path png = folder.resolve("a.png");
        CommandRun run =
                run("spread", DEMO, "--runs", "20", "--steady", "--csv", csv.toString(), "--png", png.toString());
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("Margins of 20 samples", "heat at the boiler", "Assumed");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0))
                .startsWith("kind,id,stage,unit,value,valueLow")
                .contains("share:discharge-coefficient");
        assertThat(lines.stream().skip(1)).allMatch(l -> l.startsWith("margin,"));
        assertThat(ImageIO.read(png.toFile()).getWidth()).isGreaterThan(1000);
    }

    @Test
    void restAloneHasNoEvents() {
        JsonNode json = json(steady());
        assertThat(json.get("scope").stringValue()).isEqualTo("rest");
        assertThat(json.get("events")).isEmpty();
        assertThat(json.get("margins")).isNotEmpty();
    }

    @Test
    void aRigThatMostlyFailsEndsWithOne() {
        assertThat(run("spread", "demo:neon-workshop", "--runs", "20", "--steady")
                        .code())
                .isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--runs=0",
                "--runs=-3",
                "--runs=19",
                "--runs=20000000",
                "--runs=many",
                "--threads=0",
                "--threads=1000",
                "--seed=x",
                "--range=nonsense",
                "--range=nonsense=1..2",
                "--range=supply-power-factor=0.9",
                "--range=contact-domed-glass=30..50",
                "--range=contact-domed-glass=30 W..50 W"
            })
    void whatMakesNoSenseIsRefusedBeforeAnythingIsComputed(String option) {
        CommandRun run = run("spread", DEMO, option);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("boilwright: ").doesNotContain("Exception");
        assertThat(source.asked()).isZero();
    }

    @Test
    void aReversedRangeIsRefused() {
        CommandRun run = run("spread", DEMO, "--range", "discharge-coefficient=0.9..0.7");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("discharge-coefficient", "not below");
    }

    @Test
    void aGivenRangeIsUsed() {
        JsonNode json = json(run(
                "spread", DEMO, "--runs", "20", "--steady", "--json", "--range", "heatSource.ratedPower=290 W..310 W"));
        JsonNode last = json.get("inputs").get(json.get("inputs").size() - 1);
        assertThat(last.get("id").stringValue()).isEqualTo("heatSource.ratedPower");
        assertThat(last.get("low").doubleValue()).isEqualTo(290);
        assertThat(last.get("shape").stringValue()).isEqualTo("uniform");
    }

    @Test
    void aMillionSamplesNeedAWord() {
        CommandRun run = run("spread", DEMO, "--runs", "1000000", "--steady");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("1000000 samples", "will take about", "--yes");
    }

    @Test
    void whatIsStoppedPrintsTheSamplesDoneAndEndsLikeAStop() throws Exception {
        CancelToken cancel = new CancelToken();
        source.stopping(cancel, 25e-6);
        Path csv = folder.resolve("part.csv");
        CommandRun run = CommandRun.of(
                folder,
                source,
                cancel,
                "spread",
                DEMO,
                "--runs",
                "1000000",
                "--steady",
                "--yes",
                "--csv",
                csv.toString());
        assertThat(run.code()).isEqualTo(130);
        assertThat(run.out()).contains("Stopped after ", " of 1000000 samples");
        assertThat(csv).isNotEmptyFile();
    }

    @Test
    void stoppedAtOnceThereIsNothingToPrint() {
        CancelToken cancel = new CancelToken();
        cancel.cancel();
        CommandRun run = CommandRun.of(folder, source, cancel, "spread", DEMO);
        assertThat(run.code()).isEqualTo(130);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void bandsStandBesideTheValuesOfAnAnswer() {
        CommandRun text =
                CommandRun.of(folder, Stored.MODEL, new CancelToken(), "check", "--all", DEMO, "--spread", "20");
        assertThat(text.code()).as(text.err()).isZero();
        assertThat(text.out()).contains("Spread: ", "10 to 90 % of 20 samples", "fails in");
        assertThat(text.out().lines().filter(l -> l.contains("jet lights: ")))
                .isNotEmpty()
                .allMatch(l -> l.contains(" to ") && l.contains("("));
        JsonNode json = json(
                CommandRun.of(folder, Stored.MODEL, new CancelToken(), "warmup", DEMO, "--spread", "20", "--json"));
        assertThat(json.get("spreadSamples").intValue()).isEqualTo(20);
        assertThat(json.get("margins")).allMatch(m -> m.has("valueLow") && m.has("chanceOfFailing"));
        assertThat(Stream.of(json.get("events")).flatMap(e -> e.valueStream())).allMatch(e -> e.has("timeSLow"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--spread=0", "--spread=5", "--spread=100000", "--spread=some"})
    void bandsOfTooFewOrTooManySamplesAreRefused(String option) {
        CommandRun run = run("check", DEMO, option);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).startsWith("boilwright: ").contains("--spread");
        assertThat(source.asked()).isZero();
    }

    @Test
    void withoutTheOptionAnAnswerIsAsBefore() {
        CommandRun run = run("check", DEMO, "--json");
        assertThat(run.out()).doesNotContain("valueLow", "spreadSamples", "timeSLow");
    }
}
