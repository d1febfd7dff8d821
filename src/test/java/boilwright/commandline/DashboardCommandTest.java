package boilwright.commandline;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.dashboard.Opening;
import boilwright.dashboard.PageName;
import boilwright.dashboard.Theme;
import boilwright.numerics.CancelToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the window is asked for on the command line. */
class DashboardCommandTest {
    @TempDir
    Path folder;

    private final RecordedWindow window = new RecordedWindow();

    @Test
    void opensOnADemoWithoutAnArgument() {
        assertThat(run().code()).isZero();
        Opening opening = window.shown().get(0);
        assertThat(opening.rig().name()).isEqualTo("Neon workshop");
        assertThat(opening.file()).isEmpty();
        assertThat(opening.page()).isEqualTo(PageName.RIG);
        assertThat(opening.theme()).isEmpty();
    }

    @Test
    void opensTheRigAndPageThatAreNamed() {
        run("dashboard", "demo:mirror-club", "--page", "time", "--size", "1920x1080", "--theme", "dark");
        Opening opening = window.shown().get(0);
        assertThat(opening.rig().name()).isEqualTo("Mirror club");
        assertThat(opening.page()).isEqualTo(PageName.TIME);
        assertThat(opening.width()).isEqualTo(1920);
        assertThat(opening.height()).isEqualTo(1080);
        assertThat(opening.theme()).contains(Theme.DARK);
    }

    @Test
    void writesThePictureWhole() {
        Path file = folder.resolve("window.png");
        CommandRun run = run("dashboard", "--picture", file.toString());
        assertThat(run.code()).isZero();
        assertThat(run.out()).isEmpty();
        assertThat(file).hasBinaryContent(RecordedWindow.PICTURE);
        assertThat(window.shown()).isEmpty();
    }

    @Test
    void saysWhichPagesSizesAndThemesThereAre() {
        assertThat(run("dashboard", "--page", "tmie").err())
                .contains("\"tmie\"", "rig, heat, time, water, vacuum, run, fluids");
        assertThat(run("dashboard", "--size", "big").err()).contains("\"big\"", "1920x1080", "800x600", "7680x4320");
        assertThat(run("dashboard", "--theme", "blue").err()).contains("\"blue\"", "light, dark");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--page tmie",
                "--size 1280",
                "--size 100x100",
                "--size 99999x99999",
                "--size -1280x720",
                "--theme blue",
                "no-such-file.json",
                "demo:no-such"
            })
    void refusesWhatItCanNotShow(String line) {
        CommandRun run = run(("dashboard " + line).split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("boilwright: ");
        assertThat(window.shown()).isEmpty();
    }

    @Test
    void aFileThatIsMissingOrNoRigIsRefusedInOneMessage() throws IOException {
        Path missing = folder.resolve("none.json");
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "no rig at all");
        for (Path file : List.of(missing, bad)) {
            CommandRun ran = run("dashboard", file.toString());
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err().lines()).hasSize(1);
            assertThat(ran.err()).contains(file.getFileName().toString());
        }
    }

    @Test
    void looksAtThePicturesPlaceBeforeItDraws() {
        CommandRun run = run(
                "dashboard", "--picture", folder.resolve("missing/window.png").toString());
        assertThat(run.code()).isEqualTo(4);
        assertThat(window.drawn()).isEmpty();
    }

    @Test
    void doesNotDrawOverTheRig() throws IOException {
        Path rig = folder.resolve("rig.json");
        Files.writeString(rig, "{}");
        CommandRun run = run("dashboard", rig.toString(), "--picture", rig.toString());
        assertThat(run.code()).isEqualTo(2);
        assertThat(rig).hasContent("{}");
    }

    private CommandRun run(String... arguments) {
        return CommandRun.of(folder, StoredModel.with(Margin.Status.HOLDS), window, new CancelToken(), arguments);
    }
}
