package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.Counts;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.rig.Rig;
import boilwright.rig.file.RigWriter;
import boilwright.rig.file.Texts;
import boilwright.thermal.TestRigs;
import boilwright.vacuum.VacuumRigs;
import java.nio.file.Files;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;

/** The vacuum page with a person at it. */
class WindowVacuumTest extends AtTheWindow {
    private void open(Rig rig) {
        open = OpenWindow.on(rig, Optional.empty(), folder, PageName.VACUUM);
        open.answer();
    }

    private String text(String id) {
        return open.find(id, Label.class).getText();
    }

    private void verdict(String part) {
        open.until(
                part,
                () -> open.lookup("vacuum-verdict")
                        .map(node -> ((Label) node).getText().contains(part))
                        .orElse(false));
    }

    @Test
    void everyDemoShowsItsLineInBothThemes() {
        open(OpenWindow.demo("mirror-club"));
        for (String demo : Counts.firstOf("mirror-club", "neon-workshop", "teaching-lab")) {
            open.onWindowsThread(() -> open.window().desk().openDemo(demo));
            open.until(demo, () -> open.window().session().rig().equals(OpenWindow.demo(demo)));
            open.answer();
            Rig rig = open.window().session().rig();
            String first = rig.vacuum().orElseThrow().line().get(0).name();
            open.until(
                    first,
                    () -> open.lookup("vacuum-stop-1")
                            .map(node -> ((Label) node).getText().startsWith(first))
                            .orElse(false));
            Node stop = open.find("vacuum-stop-1", Node.class);
            assertThat(stop.isFocusTraversable()).isTrue();
            assertThat(stop.getAccessibleText()).contains("of the lost speed");
            assertThat(open.find("vacuum-along", SeriesChart.class).data().series())
                    .hasSize(2);
            assertThat(open.find("vacuum-course", SeriesChart.class).data().series())
                    .hasSize(3);
            assertThat(OpenWindow.words(open.window().frame().pageShown()))
                    .anyMatch(words -> words.startsWith("Caution: Never let air onto hot oil"));
            open.act(Action.THEME);
        }
    }

    @Test
    void theHoseIsBlamedItsFixIsTriedAndUndone() {
        Rig before = VacuumRigs.hoseCase();
        open(before);
        verdict("the gas side holds the gauge up, not the heat");
        assertThat(text("vacuum-stop-1")).contains("worst");
        open.onWindowsThread(() -> open.find("vacuum-fix-0", Button.class).fire());
        assertThat(open.window().session().rig()).isNotEqualTo(before);
        assertThat(open.window().session().undoNameProperty().get()).contains("hose");
        open.answer();
        open.until("another line", () -> !text("vacuum-stop-1").contains("8.00 mm"));
        open.act(Action.UNDO);
        assertThat(open.window().session().rig()).isEqualTo(before);
    }

    @Test
    void aRigWithoutChamberIsGivenOneToBeginWith() {
        Rig before = TestRigs.metal150(2200);
        open(before);
        assertThat(open.find("vacuum-none", Node.class).isVisible()).isTrue();
        open.onWindowsThread(() -> open.find("vacuum-describe", Button.class).fire());
        Rig now = open.window().session().rig();
        assertThat(now.vacuum()).isPresent();
        assertThat(now.guesses()).contains("vacuum.chamber.volume", "vacuum.chamber.surfaces[0].area");
        // what the window writes, a file reads back
        assertThat(Texts.rig(RigWriter.write(now), java.util.List.of(now.fluidId())))
                .isEqualTo(now);
        open.answer();
        verdict("the gauge stands at");
    }

    @Test
    void aRecordOfARiseIsJudgedAndABadOneRefusedInWords() throws Exception {
        open(OpenWindow.demo("mirror-club"));
        StringBuilder csv = new StringBuilder("t [s],p [Pa]\n");
        for (int i = 0; i <= 40; i++) {
            csv.append(15 * i)
                    .append(',')
                    .append(0.01 + 2e-4 * 15 * i * (1 + 0.01 * Math.sin(7 * i)))
                    .append('\n');
        }
        open.willOpen(Files.writeString(folder.resolve("rise.csv"), csv.toString()));
        open.onWindowsThread(() -> {
            open.find("rise-volume", TextField.class).setText("130 L");
            open.find("rise-choose", Button.class).fire();
        });
        open.until("a verdict", () -> text("rise-sentence").contains("leak"));
        assertThat(open.find("rise-chart", SeriesChart.class).isVisible()).isTrue();
        open.willOpen(Files.writeString(folder.resolve("bad.csv"), "t [s],p [Pa]\n0,1\n10,x\n"));
        open.onWindowsThread(() -> open.find("rise-choose", Button.class).fire());
        open.until("a refusal", () -> text("rise-sentence").contains("line 3"));
        assertThat(open.find("rise-chart", SeriesChart.class).isVisible()).isFalse();
    }
}
