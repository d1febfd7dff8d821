package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.companion.CompanionStage;
import boilwright.rig.Foreline;
import boilwright.sequence.Variant;
import boilwright.thermal.Fault;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;

/** The page of the run with a person at it. */
class WindowRunTest extends AtTheWindow {
    private void open(String demo) {
        open = OpenWindow.on(OpenWindow.demo(demo), Optional.empty(), folder, PageName.RUN);
        open.answer();
    }

    private String text(String id) {
        return open.lookup(id).map(node -> ((Label) node).getText()).orElse("");
    }

    private void drills() {
        open.until("the drills", () -> !text("run-drills-verdict").isEmpty());
    }

    @Test
    void everyDemoHasItsPlanOrTheReasonItsFaultsAndItsInterlocksInBothThemes() {
        open("mirror-club");
        for (String demo : Counts.firstOf("neon-workshop", "mirror-club", "teaching-lab")) {
            open.onWindowsThread(() -> open.window().desk().openDemo(demo));
            open.until(demo, () -> open.window().session().rig().equals(OpenWindow.demo(demo)));
            open.answer();
            boolean none = demo.equals("neon-workshop");
            open.until(
                    "the plan of " + demo,
                    () -> open.find("run-sheet", Button.class).isDisabled() == none
                            && text("run-verdict").contains(none ? "No safe plan" : "Rules kept"));
            if (none) {
                // its jets never fill: what a fault would do to it cannot be told, and is not
                open.until("the reason", () -> text("run-drills-verdict").contains("cannot be told"));
                assertThat(open.find("run-drill-sentence", Node.class).isVisible())
                        .isFalse();
                continue;
            }
            String name = OpenWindow.demo(demo).name();
            open.until(
                    "the faults of " + name,
                    () -> open.lookup("run-drill-mains").isPresent()
                            && !text("run-drill-sentence").isEmpty());
            assertThat(open.find("run-drill-temperatures", SeriesChart.class)
                            .data()
                            .series())
                    .isNotEmpty();
            assertThat(OpenWindow.words(open.find("run-interlocks", Node.class)))
                    .contains("water flow", "foreline");
            open.act(Action.THEME);
        }
    }

    @Test
    void aStepThatIsChosenOpensTheTimeBandGoesThereAndTheCompanionOpens() {
        open("mirror-club");
        open.until("the steps", () -> open.lookup("run-step-15").isPresent());
        ToggleButton off = open.find("run-step-15", ToggleButton.class);
        assertThat(off.getText()).contains("Turn the heat off");
        open.onWindowsThread(off::fire);
        var timeline = open.window().frame().band();
        double cursor = timeline.cursorSProperty().get();
        assertThat(OpenWindow.words(open.find("run-steps", Node.class)))
                .anyMatch(words -> words.startsWith("Why: All heat"));
        assertThat(open.find("run-chip-15", ToggleButton.class).isSelected()).isTrue();
        ToggleButton chip = open.find("run-chip-18", ToggleButton.class);
        assertThat(chip.getAccessibleText()).contains("Step 18", "60.0 degC");
        open.onWindowsThread(chip::fire);
        assertThat(timeline.cursorSProperty().get()).isGreaterThan(cursor + 3600);
        assertThat(open.find("run-step-18", ToggleButton.class).isSelected()).isTrue();
        assertThat(open.find("run-step-15", ToggleButton.class).isSelected()).isFalse();
        theCompanionOpensBesideTheWindow();
    }

    private void theCompanionOpensBesideTheWindow() {
        open.onWindowsThread(() -> open.find("run-companion", Button.class).fire());
        List<Stage> stages = javafx.stage.Window.getWindows().stream()
                .filter(CompanionStage.class::isInstance)
                .map(Stage.class::cast)
                .toList();
        assertThat(stages).hasSize(1);
        assertThat(stages.get(0).getTitle()).contains("Mirror club");
        open.onWindowsThread(stages.get(0)::close);
    }

    @Test
    void anotherVariantHasAnotherPlanAndItsSheetIsWritten() throws Exception {
        open("mirror-club");
        open.until("the steps", () -> open.lookup("run-step-15").isPresent());
        @SuppressWarnings("unchecked")
        ComboBox<Variant> variant = open.find("run-variant", ComboBox.class);
        open.onWindowsThread(() -> variant.setValue(Variant.EMERGENCY));
        open.until("the emergency", () -> text("run-verdict").startsWith("A stop"));
        Path sheet = folder.resolve("sheet.pdf");
        open.willSave(sheet);
        open.onWindowsThread(() -> open.find("run-sheet", Button.class).fire());
        open.until(
                "the sheet",
                () -> open.find("status", WindowStatus.class).getText().contains("sheet.pdf"));
        assertThat(Files.readAllBytes(sheet)).startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        open.willSave(folder.resolve("nowhere").resolve("sheet.pdf"));
        open.onWindowsThread(() -> open.find("run-sheet", Button.class).fire());
        open.until("the refusal", () -> open.notices().contains("was not written"));
    }

    @Test
    void aFaultIsChosenFromTheTableAndOneThatCanNotBeFollowedIsNamed() {
        open("mirror-club");
        drills();
        open.onWindowsThread(() -> open.find("run-drill-backing", Button.class).fire());
        assertThat(open.find("run-drill-chooser", ComboBox.class).getValue()).isEqualTo(Fault.BACKING);
        assertThat(text("run-drill-sentence")).startsWith("The backing pump stops");
        assertThat(open.find("run-drill-foreline", SeriesChart.class).isVisible())
                .isTrue();
        open.onWindowsThread(
                () -> open.window().session().edit("given", rig -> rig.withForeline(new Foreline.GivenPressure(5))));
        open.answer();
        open.until("the new drills", () -> open.lookup("run-drill-backing").isEmpty());
        assertThat(OpenWindow.words(open.find("run-drills", Node.class)))
                .anyMatch(words -> words.contains("given as a pressure"));
        assertThat(open.find("run-drill-foreline", SeriesChart.class).isVisible())
                .isFalse();
    }
}
