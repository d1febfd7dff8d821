package boilwright.commandline;

import static boilwright.errors.Said.said;
import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.answers.Model;
import boilwright.errors.CancelledException;
import boilwright.errors.ComputationException;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.numerics.CancelToken;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every exit code, what is printed where, and what is left on the disk. */
class BoilwrightTest {
    private static final String DEMO = "demo:neon-workshop";

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(
            value = Margin.Status.class,
            names = {"HOLDS", "TIGHT", "UNKNOWN"})
    void endsWithZeroWhileNothingFails(Margin.Status heat) {
        CommandRun run = run(StoredModel.with(heat), "check", "--all", DEMO);
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Margins, worst first");
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "warmup", "cooldown"})
    void endsWithOneWhenAMarginFails(String command) {
        CommandRun run = run(StoredModel.with(Margin.Status.FAILS), command, DEMO);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("x fails    " + MarginId.HEAT.title());
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "chekc demo:neon-workshop",
                "check",
                "check demo:neon-workshop demo:mirror-club",
                "check --jsn demo:neon-workshop",
                "check demo:neon-workshop --csv",
                "check demo:neon-workshop --csv a.csv --csv b.csv",
                "check demo:no-such",
                "check no-such-file.json",
                "check demo:neon-workshop --accept no.such.field",
                "check demo:neon-workshop --fluids no-such-folder",
                "check demo:neon-workshop --csv same --png same",
                "fluids no-such-fluid",
                "fluids 704-type 705-type",
                "--no-such"
            })
    void refusesBadUsageAndInputOnStandardErrorOnly(String line) throws IOException {
        StoredModel source = StoredModel.with(Margin.Status.HOLDS);
        CommandRun run = run(source, line.split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines()).isNotEmpty().allMatch(said -> said.startsWith("boilwright: "));
        assertThat(run.err()).doesNotContain("Exception", "\tat ");
        assertThat(source.asked()).isZero();
        assertThat(left()).isEmpty();
    }

    @Test
    void namesTheNearestWordThatItKnows() {
        StoredModel none = StoredModel.with(Margin.Status.HOLDS);
        assertThat(run(none, "chekc", DEMO).err()).contains("Was check meant?", "boilwright --help");
        assertThat(run(none, "check", DEMO, "--jsn").err()).contains("Was --json meant?", "boilwright check --help");
        assertThat(run(none, "check", DEMO, "--cvs=a").err()).contains("Was --csv meant?");
    }

    @Test
    void refusesToWriteOverTheRigItself() throws IOException {
        Path rig = folder.resolve("rig.json");
        Files.writeString(rig, "{}");
        CommandRun run = run(StoredModel.with(Margin.Status.HOLDS), "check", rig.toString(), "--csv", rig.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--csv", "would overwrite");
        assertThat(rig).hasContent("{}");
    }

    @Test
    void endsWithThreeWhenTheModelDoesNotStandBehindItsAnswer() {
        Message reason = Message.of(MessageKey.USAGE_REFUSED, "The balance is 3 % off.", "x");
        CommandRun run = run(StoredModel.failing(new ComputationException(reason)), "check", DEMO);
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("The balance is 3 % off.");
    }

    @Test
    void looksAtTheOutputsBeforeTheLongComputation() throws IOException {
        StoredModel source = StoredModel.with(Margin.Status.HOLDS);
        Path good = folder.resolve("a.csv");
        String bad = folder.resolve("missing/a.png").toString();
        CommandRun run = run(source, "check", DEMO, "--csv", good.toString(), "--png", bad);
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(bad);
        assertThat(source.asked()).isZero();
        assertThat(left()).isEmpty();
    }

    @Test
    void endsWithFourWhenTheAnswerCannotBePrinted() {
        PrintStream full = new PrintStream(new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("full");
            }
        });
        Terminal terminal = new Terminal(
                full,
                new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
                folder,
                false,
                new CancelToken());
        assertThat(Boilwright.run(terminal, StoredModel.with(Margin.Status.HOLDS), new RecordedWindow(), "check", DEMO))
                .isEqualTo(4);
    }

    @Test
    void writesTheFilesThatWereAskedFor() throws IOException {
        Path csv = folder.resolve("time line.csv");
        Path png = folder.resolve("picture.png");
        CommandRun run =
                run(StoredModel.with(Margin.Status.HOLDS), "warmup", DEMO, "--csv", csv.toString(), "--png=" + png);
        assertThat(run.code()).isZero();
        assertThat(Files.readString(csv)).startsWith("timeS,");
        assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
        assertThat(left()).containsExactlyInAnyOrder("time line.csv", "picture.png");
    }

    @Test
    void keepsAFaultOffTheScreenAndInAReport() throws IOException {
        StoredModel source = StoredModel.failing(new IllegalStateException("column ran dry"));
        CommandRun first = run(source, "check", DEMO);
        CommandRun second = run(source, "check", DEMO);
        assertThat(first.code()).isEqualTo(5);
        assertThat(second.code()).isEqualTo(5);
        assertThat(first.out()).isEmpty();
        assertThat(first.err())
                .hasLineCount(1)
                .contains("column ran dry", "boilwright-fault-1.txt")
                .doesNotContain("\tat ");
        assertThat(left()).containsExactlyInAnyOrder("boilwright-fault-1.txt", "boilwright-fault-2.txt");
        assertThat(folder.resolve("boilwright-fault-1.txt"))
                .content()
                .contains("Boilwright ", "check " + DEMO, "IllegalStateException: column ran dry", "\tat ");
    }

    @Test
    void countsAnErrorOfTheMachineAsAFaultToo() {
        CommandRun run = run(StoredModel.failing(new StackOverflowError()), "check", DEMO);
        assertThat(run.code()).isEqualTo(5);
        assertThat(run.err()).contains("StackOverflowError").doesNotContain("\tat ");
    }

    @Test
    void endsWith130WhenStopped() throws IOException {
        CancelToken cancelled = new CancelToken();
        cancelled.cancel();
        String csv = folder.resolve("a.csv").toString();
        CommandRun early =
                CommandRun.of(folder, StoredModel.with(Margin.Status.HOLDS), cancelled, "check", DEMO, "--csv", csv);
        CommandRun midway = run(StoredModel.failing(new CancelledException()), "cooldown", DEMO, "--csv", csv);
        assertThat(List.of(early.code(), midway.code())).containsExactly(130, 130);
        assertThat(early.out() + midway.out()).isEmpty();
        assertThat(early.err()).contains(said(MessageKey.STOPPED));
        assertThat(left()).isEmpty();
    }

    @Test
    void printsItsUsageWhenAskedForHelp() {
        for (String[] arguments : new String[][] {{"--help"}, {"-h"}}) {
            CommandRun run = run(StoredModel.with(Margin.Status.HOLDS), arguments);
            assertThat(run.code()).isZero();
            assertThat(run.out())
                    .contains("Usage: boilwright", "dashboard", "check", "warmup", "cooldown", "fluids", "Exit codes");
            assertThat(run.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            assertThat(run.err()).isEmpty();
        }
    }

    @Test
    void everyCommandExplainsItself() {
        for (String command : List.of("check", "warmup", "cooldown")) {
            CommandRun run = run(StoredModel.with(Margin.Status.HOLDS), command, "--help");
            assertThat(run.code()).isZero();
            assertThat(run.out()).contains("--json", "--csv", "--png", "--fluids", "--accept", "RIG");
        }
    }

    @Test
    void namesItsVersion() {
        CommandRun run = run(StoredModel.with(Margin.Status.HOLDS), "--version");
        assertThat(run.code()).isZero();
        assertThat(run.out()).matches("Boilwright \\d+\\.\\d+\\.\\d+\\R");
    }

    @Test
    void listsTheFluidsAndShowsOne() {
        StoredModel none = StoredModel.with(Margin.Status.HOLDS);
        assertThat(run(none, "fluids").out()).contains("704-type").contains("degC");
        assertThat(run(none, "fluids", "704-type").out()).contains("source");
        assertThat(run(none, "fluids", "704-type", "--json").out())
                .startsWith("{")
                .contains("\"fromMemory\"");
    }

    private CommandRun run(Model model, String... arguments) {
        return CommandRun.of(folder, model, new CancelToken(), arguments);
    }

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }
}
