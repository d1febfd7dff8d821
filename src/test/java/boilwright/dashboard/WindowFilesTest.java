package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.session.RigSession;
import boilwright.rig.Rig;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Rig files through the window: opened, saved, refused, changed by others, found again after a crash. */
class WindowFilesTest extends AtTheWindow {
    private Path state;

    @BeforeEach
    void begin() {
        state = folder.resolve("state");
        open = OpenWindow.on(OpenWindow.demo("teaching-lab"), Optional.empty(), state, PageName.TIME);
    }

    @Test
    void savesAndReopensTheSameRig() {
        Path file = folder.resolve("mine.json");
        edit("heatSource.ratedPower", 350);
        open.willSave(file);
        open.act(Action.SAVE);
        open.until("saving", () -> session().file().isPresent());
        assertThat(session().isDirty()).isFalse();
        Rig saved = session().rig();
        assertThat(RigReader.read(file, OpenWindow.FLUIDS.workingFluids(), Set.of()))
                .isEqualTo(saved);
        edit("heatSource.ratedPower", 360);
        open.act(Action.SAVE);
        open.until("saving again", () -> !session().isDirty());
        open.onWindowsThread(() -> open.window().desk().openDemo("neon-workshop"));
        open.until("the demo", () -> session().rig().name().equals("Neon workshop"));
        open.willOpen(file);
        open.act(Action.OPEN);
        open.until("opening", () -> session().rig().name().equals("Teaching lab"));
        assertThat(session().rig().heatSource().ratedPowerW()).isEqualTo(360);
        assertThat(session().file()).contains(file);
    }

    @Test
    void undoToTheStartGivesTheIdenticalFile() throws IOException {
        Path file = folder.resolve("mine.json");
        RigFiles.write(OpenWindow.demo("mirror-club"), file);
        byte[] before = Files.readAllBytes(file);
        open.willOpen(file);
        open.act(Action.OPEN);
        open.until("opening", () -> session().file().isPresent());
        edit("heatSource.ratedPower", 1000);
        edit("cooling.supply.setPoint", 290);
        edit("charge", 4e-4);
        open.act(Action.UNDO);
        open.act(Action.UNDO);
        open.act(Action.UNDO);
        assertThat(session().isDirty()).isFalse();
        Path again = folder.resolve("again.json");
        open.willSave(again);
        open.act(Action.SAVE_AS);
        open.until("saving", () -> Files.exists(again) && session().file().equals(Optional.of(again)));
        assertThat(again).hasBinaryContent(before);
    }

    @Test
    void saysEverythingThatIsWrongWithAFileAndKeepsTheRig() throws IOException {
        Rig before = session().rig();
        Path bad = folder.resolve("bad.json");
        Files.writeString(bad, "{\"format\": 1, \"name\": \"x\", \"charge\": \"60 furlongs\", \"colour\": \"red\"}");
        openFile(bad);
        open.until("the refusal", () -> open.notices().contains("bad.json was not opened"));
        assertThat(open.notices()).contains("furlongs", "colour", "boiler is missing", "heatSource is missing");
        assertThat(session().rig()).isEqualTo(before);
        assertThat(open.answer().check().rig()).isEqualTo(before);
    }

    @Test
    void saysThatAFileIsOfANewerFormat() throws IOException {
        Path newer = folder.resolve("newer.json");
        Files.writeString(newer, RigWriter.write(session().rig()).replaceFirst("\"format\": \\d+", "\"format\": 99"));
        openFile(newer);
        open.until("the refusal", () -> open.notices().contains("newer program"));
    }

    @Test
    void asksAboutSlipsAndOpensTheFileAsItIsWritten() throws IOException {
        Path slip = folder.resolve("slip.json");
        Files.writeString(slip, RigWriter.write(session().rig()).replace("\"300 W\"", "\"300 kW\""));
        openFile(slip);
        open.choose("They are meant: open it");
        open.until("opening", () -> session().rig().heatSource().ratedPowerW() == 300_000);
    }

    @Test
    void neverOverwritesWhatSomebodyElseWroteMeanwhile() throws IOException {
        Path file = folder.resolve("mine.json");
        open.willSave(file);
        open.act(Action.SAVE);
        open.until("saving", () -> session().file().isPresent());
        String theirs = Files.readString(file).replace("Teaching lab", "Their lab");
        Files.writeString(file, theirs);
        edit("heatSource.ratedPower", 350);
        open.act(Action.SAVE);
        open.until("the question", () -> open.notices().contains("changed by somebody else"));
        assertThat(file).hasContent(theirs);
        open.choose("Write mine over it");
        open.until("saving", () -> !session().isDirty());
        assertThat(file).content().contains("350 W").doesNotContain("Their lab");
    }

    @Test
    void saysWhyAFileCanNotBeSavedAndKeepsTheEdits() throws IOException {
        edit("heatSource.ratedPower", 350);
        open.willSave(folder.resolve("missing").resolve("mine.json"));
        open.act(Action.SAVE_AS);
        open.until("the refusal", () -> open.notices().contains("was not saved; your edits are still here"));
        assertThat(session().isDirty()).isTrue();
        assertThat(session().rig().heatSource().ratedPowerW()).isEqualTo(350);
    }

    @Test
    void asksBeforeUnsavedEditsAreGivenUp() {
        edit("heatSource.ratedPower", 350);
        open.act(Action.CLOSE);
        open.until("the question", () -> open.notices().contains("Teaching lab has edits that are not saved"));
        open.choose("Let it be");
        assertThat(open.isShowing()).isTrue();
        assertThat(session().isDirty()).isTrue();
        open.willSave(folder.resolve("mine.json"));
        open.act(Action.CLOSE);
        open.choose("Save, then go on");
        open.until("closing", () -> !open.isShowing());
        assertThat(folder.resolve("mine.json")).content().contains("350 W");
    }

    @Test
    void offersTheEditsAfterACrash() throws IOException {
        Path file = folder.resolve("mine.json");
        open.willSave(file);
        open.act(Action.SAVE);
        open.until("saving", () -> session().file().isPresent());
        edit("heatSource.ratedPower", 350);
        open.until("the copy", () -> Files.exists(state.resolve("recovery/rig-1.json")));
        open.crash();
        // A process that dies gives its lock back; here the process goes on, so the lock file goes instead.
        Files.delete(state.resolve("recovery/rig-1.lock"));

        OpenWindow next = OpenWindow.on(OpenWindow.demo("neon-workshop"), Optional.empty(), state, PageName.TIME);
        next.choose("Go on with them");
        next.until("the edits", () -> next.window().session().rig().name().equals("Teaching lab"));
        RigSession session = next.window().session();
        assertThat(session.rig().heatSource().ratedPowerW()).isEqualTo(350);
        assertThat(session.file()).contains(file.toAbsolutePath());
        assertThat(session.isDirty()).isTrue();
        next.act(Action.UNDO);
        assertThat(session.isDirty()).isFalse();
        next.close();
        assertThat(next.faults()).isEmpty();
    }

    private RigSession session() {
        return open.window().session();
    }

    private void edit(String path, double si) {
        open.onWindowsThread(() -> assertThat(session()
                        .edit(path, rig -> RigFields.of(rig).with(path, si).rig(OpenWindow.FLUIDS.workingFluids())))
                .isTrue());
    }

    private void openFile(Path file) {
        open.willOpen(file);
        open.act(Action.OPEN);
    }
}
