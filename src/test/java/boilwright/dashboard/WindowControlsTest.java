package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Model;
import boilwright.dashboard.pages.PageContext;
import boilwright.dashboard.parts.OnOffSwitch;
import boilwright.dashboard.session.FluidShelf;
import boilwright.dashboard.work.BackgroundWork;
import boilwright.dashboard.work.BackgroundWork.Urgency;
import boilwright.rig.Material;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import java.util.concurrent.CountDownLatch;
import javafx.application.Platform;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Lists that are searched, switches and the status bar, with a person at the keyboard. */
class WindowControlsTest extends AtTheWindow {
    @BeforeEach
    void begin() {
        share("mirror-club", PageName.RIG);
    }

    @Test
    void longListsAreSearchedByPartOfAName() {
        Rig before = rig();
        search("fluid", "merc", KeyCode.ENTER);
        assertThat(rig().fluidId()).isEqualTo("mercury");
        assertThat(shown("fluid")).isEqualTo(OpenWindow.FLUIDS.find("mercury").title());
        open.act(Action.UNDO);
        assertThat(rig()).as("one edit").isEqualTo(before);

        open.onWindowsThread(() -> open.find("part-body", TitledPane.class).setExpanded(true));
        search("body.material", "cop", KeyCode.ENTER);
        assertThat(rig().body().material()).isEqualTo(Material.COPPER);
        assertThat(shown("body.material")).isEqualTo("copper");

        search("fluid", "zz", KeyCode.TAB);
        assertThat(rig().fluidId()).isEqualTo(before.fluidId());
        assertThat(shown("fluid"))
                .isEqualTo(OpenWindow.FLUIDS.find(before.fluidId()).title());

        open.onWindowsThread(() -> open.find("part-vacuum", TitledPane.class).setExpanded(true));
        search("vacuum.chamber.surfaces[0].material", "ch", KeyCode.ENTER);
        assertThat(rig().vacuum().orElseThrow().chamber().surfaces().get(0).material())
                .isEqualTo("chromium-plated-steel");
    }

    @Test
    void theDarkThemeIsASwitch() {
        OnOffSwitch dark = open.find("action-theme", OnOffSwitch.class);
        open.onWindowsThread(dark::requestFocus);
        robot.push(KeyCode.SPACE);
        assertThat(dark.isSelected()).isTrue();
        assertThat(open.window().frame().getPseudoClassStates()).contains(OpenWindow.DARK);
        open.act(Action.THEME);
        assertThat(dark.isSelected()).isFalse();
        assertThat(open.window().frame().getPseudoClassStates()).doesNotContain(OpenWindow.DARK);
    }

    @Test
    void theStatusBarTellsWhatIsRefusedAndWhichFileItIs() {
        open.answer();
        open.until("the answers", () -> status().getText().equals("The answers are up to date."));
        assertThat(open.find("file-state", Label.class).getText()).isEqualTo("Not saved yet");
        edit(50);
        assertThat(status().getText()).startsWith("The last entry was refused");
        assertThat(OpenWindow.words(open.window().frame())).anyMatch(words -> words.startsWith("Not up to date:"));
        edit(3e-4);
        assertThat(status().getText()).doesNotContain("refused");
        open.willSave(folder.resolve("mine.json"));
        open.act(Action.SAVE);
        open.until(
                "the file", () -> open.find("file-state", Label.class).getText().equals("mine.json"));
    }

    @Test
    void theStatusBarShowsHowFarWorkIs() {
        open.answer();
        BackgroundWork work = new BackgroundWork(Platform::runLater, open.faults()::add);
        CountDownLatch done = new CountDownLatch(1);
        WindowStatus[] bar = new WindowStatus[1];
        open.onWindowsThread(() -> {
            PageContext context = new PageContext(
                    open.window().session(),
                    open.window().answering(),
                    new FluidShelf(OpenWindow.FLUIDS),
                    Model.COMPUTING);
            bar[0] = new WindowStatus(context, work);
            work.request(
                    Urgency.AFTERWARDS,
                    (cancel, progress) -> {
                        progress.progress(0.5, "half");
                        await(done);
                        return true;
                    },
                    outcome -> {},
                    why -> {});
        });
        assertThat(bar[0].getProgress()).as("short work shows nothing").isZero();
        open.until("the work", () -> bar[0].getText().startsWith("Computing"));
        assertThat(bar[0].getProgress()).isEqualTo(0.5);
        done.countDown();
        open.until("its end", () -> bar[0].getText().equals("The answers are up to date."));
        assertThat(bar[0].getProgress()).isZero();
        work.close();
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asks for a charge, m3. */
    private void edit(double charge) {
        open.onWindowsThread(() -> open.window()
                .session()
                .edit(
                        "charge",
                        rig -> RigFields.of(rig).with("charge", charge).rig(OpenWindow.FLUIDS.workingFluids())));
    }

    private WindowStatus status() {
        return open.find("status", WindowStatus.class);
    }

    private Rig rig() {
        return open.window().session().rig();
    }

    private ComboBox<?> box(String path) {
        return (ComboBox<?>) open.find(path, VBox.class).lookup(".combo-box");
    }

    private String shown(String path) {
        return ((Labeled) box(path).lookup(".list-cell")).getText();
    }

    /** Opens the list of a field with the keyboard, types, and ends with a key. */
    private void search(String path, String text, KeyCode end) {
        open.onWindowsThread(box(path)::requestFocus);
        robot.push(KeyCode.DOWN);
        assertThat(box(path).isShowing()).isTrue();
        robot.write(text, 0);
        robot.push(end);
        assertThat(box(path).isShowing()).isFalse();
    }
}
