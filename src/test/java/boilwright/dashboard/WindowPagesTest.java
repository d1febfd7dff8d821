package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.answers.Margin;
import boilwright.answers.MarginId;
import boilwright.dashboard.chart.ChartData;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.SourceKind;
import boilwright.rig.file.RigReader;
import boilwright.rig.file.RigWriter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages of the window with a person at the keyboard. */
class WindowPagesTest extends AtTheWindow {
    @BeforeEach
    void begin() {
        open = OpenWindow.on(OpenWindow.demo("teaching-lab"), Optional.empty(), folder);
    }

    @Tag("deep")
    @Test
    void showsEveryDemoOnEveryPageInBothThemes() {
        for (String demo : RigReader.demoNames()) {
            open.onWindowsThread(() -> open.window().desk().openDemo(demo));
            open.until(demo, () -> open.window().session().rig().equals(OpenWindow.demo(demo)));
            String verdict = open.answer().check().verdict();
            assertThat(OpenWindow.words(open.window().frame())).contains(verdict);
            for (int theme = 0; theme < 2; theme++) {
                for (PageName page : PageName.values()) {
                    open.act(page.action());
                    assertThat(open.window().frame().pageProperty().get()).isEqualTo(page);
                }
                open.act(Action.THEME);
            }
        }
    }

    @Test
    void powerUpAndDownAcrossTheHeatLimitMovesVerdictLedgerAndPages() {
        assertThat(heat(open.answer())).isNotEqualTo(Margin.Status.FAILS);
        type("heatSource.ratedPower", "120 W");
        RigAnswer weak = open.answer();
        assertThat(heat(weak)).isEqualTo(Margin.Status.FAILS);
        int[] weaklyDrawn = drawn();
        ChartData weakChart = heatChart();
        open.act(Action.PAGE_RIG);
        assertThat(OpenWindow.words(open.window().frame()))
                .contains(weak.check().verdict());
        open.act(Action.PAGE_HEAT);
        String cure = weak.check().margins().stream()
                .filter(margin -> margin.id() == MarginId.HEAT)
                .findFirst()
                .orElseThrow()
                .cure();
        assertThat(OpenWindow.words(open.window().frame().pageShown())).contains(cure);
        open.act(Action.PAGE_RIG);
        type("heatSource.ratedPower", "0.4 kW");
        RigAnswer strong = open.answer();
        assertThat(heat(strong)).isNotEqualTo(Margin.Status.FAILS);
        assertThat(drawn()).as("the drawing follows").isNotEqualTo(weaklyDrawn);
        assertThat(heatChart()).as("the chart follows").isNotEqualTo(weakChart);
        open.act(Action.PAGE_RIG);
        assertThat(OpenWindow.words(open.window().frame()))
                .contains(strong.check().verdict())
                .doesNotContain(weak.check().verdict());
        open.act(Action.PAGE_HEAT);
        assertThat(OpenWindow.words(open.window().frame().pageShown())).doesNotContain(cure);
    }

    /** What the chart of the heat page shows now. */
    private ChartData heatChart() {
        open.act(Action.PAGE_HEAT);
        return open.window().frame().pageShown().lookupAll("*").stream()
                .filter(node -> node instanceof SeriesChart)
                .map(node -> ((SeriesChart) node).data())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aBadValueIsRefusedWhereItStandsAndTheLastAnswerStays() {
        RigAnswer before = open.answer();
        for (String bad : List.of("", "lots", "400", "400 mm", "-5 W", "NaN W", "0.4,0 kW")) {
            type("heatSource.ratedPower", bad);
            assertThat(message("heatSource.ratedPower")).as(bad).isNotEmpty();
            assertThat(open.window().session().isDirty()).isFalse();
        }
        type("heatSource.wrappedArea", "0.5 m2");
        assertThat(message("heatSource.wrappedArea")).contains("more than boiler.heatedArea");
        assertThat(OpenWindow.words(open.window().frame()))
                .contains(before.check().verdict());
        type("heatSource.wrappedArea", "140 cm2");
        type("heatSource.ratedPower", "310 W");
        assertThat(message("heatSource.ratedPower")).isEmpty();
        assertThat(open.answer().check().rig().heatSource().ratedPowerW()).isEqualTo(310);
    }

    @Test
    void aLikelySlipCanBePutRightOrMeant() {
        type("heatSource.ratedPower", "310 kW");
        assertThat(message("heatSource.ratedPower")).contains("did you mean").doesNotContain("--accept");
        press("heatSource.ratedPower", "Take 310 W");
        assertThat(open.window().session().rig().heatSource().ratedPowerW()).isEqualTo(310);
        type("heatSource.ratedPower", "320 kW");
        press("heatSource.ratedPower", "It is meant");
        assertThat(open.window().session().rig().heatSource().ratedPowerW()).isEqualTo(320_000);
        assertThat(message("heatSource.ratedPower")).isEmpty();
    }

    private void press(String path, String words) {
        Button button = open.find(path, VBox.class).lookupAll(".button").stream()
                .filter(node -> node instanceof Button one && one.getText().equals(words))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
        open.onWindowsThread(button::fire);
    }

    @Test
    void undoToTheStartGivesTheIdenticalRigAndFields() {
        String file = RigWriter.write(open.window().session().rig());
        type("heatSource.ratedPower", "350 W");
        type("charge", "70 mL");
        type("cooling.supply.staticPressure", "3 bar");
        press(KeyCode.Z);
        press(KeyCode.Z);
        press(KeyCode.Z);
        assertThat(RigWriter.write(open.window().session().rig())).isEqualTo(file);
        assertThat(open.window().session().isDirty()).isFalse();
        assertThat(input("heatSource.ratedPower").getText()).isEqualTo("300 W");
        open.answer();
    }

    @ParameterizedTest
    @EnumSource(SourceKind.class)
    void everyKindOfSourceThatFitsCanBeChosen(SourceKind kind) {
        ComboBox<?> box = (ComboBox<?>) open.find("heatSource.kind", VBox.class).lookup(".combo-box");
        open.onWindowsThread(() -> box.getSelectionModel().select(kind.ordinal()));
        boolean fits = kind != SourceKind.CLAMPED_HEATER;
        SourceKind now = open.window().session().rig().heatSource().kind();
        assertThat(now).isEqualTo(fits ? kind : SourceKind.HEATING_MANTLE);
        assertThat(message("heatSource.kind").isEmpty()).isEqualTo(fits);
        assertThat(box.getSelectionModel().getSelectedIndex()).isEqualTo(now.ordinal());
        assertThat(open.answer().check().verdict()).isNotEmpty();
    }

    @Test
    void everyFieldOfTheRigStandsInTheForm() {
        Set<String> shown = new LinkedHashSet<>();
        for (String part : List.of(
                "heatSource",
                "boiler",
                "column",
                "stages",
                "body",
                "topCap",
                "cooling",
                "room",
                "limits",
                "parameters")) {
            open.onWindowsThread(
                    () -> open.find("part-" + part, TitledPane.class).setExpanded(true));
        }
        for (Node row : open.window().frame().lookupAll(".field-row")) {
            shown.add(row.getId());
        }
        assertThat(shown)
                .contains(
                        "boiler.wallThickness",
                        "boiler.emissivity",
                        "column.segments[0].height",
                        "stages[1].throatGap",
                        "body.uncooledLowerHeight",
                        "heatSource.limit",
                        "cooling.supply.kind",
                        "cooling.supply.lineFlowAtOneBar",
                        "cooling.elements[2].covers",
                        "cooling.elements[1].flowAtOneBar",
                        "room.pressure",
                        "schedule[2].power",
                        "note");
    }

    @Test
    void walksThroughAllOfItByKeyboardAlone() {
        for (KeyCode digit : List.of(KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT1)) {
            press(digit);
        }
        assertThat(open.window().frame().pageProperty().get()).isEqualTo(PageName.RIG);
        open.onWindowsThread(() -> open.find("page-rig", Node.class).requestFocus());
        Set<String> reached = new LinkedHashSet<>();
        for (int i = 0; i < 70; i++) {
            robot.push(KeyCode.TAB);
            for (Node node = open.window().scene().getFocusOwner(); node != null; node = node.getParent()) {
                if (node.getId() != null) {
                    reached.add(node.getId());
                }
            }
        }
        assertThat(reached)
                .contains(
                        "heatSource.kind",
                        "heatSource.ratedPower",
                        "schedule[0].at",
                        "fluid",
                        "charge",
                        "cooling.supply.kind",
                        "cooling.supply.staticPressure",
                        "foreline.kind",
                        "room.temperature",
                        "part-boiler",
                        "action-theme",
                        "file-menu");
    }

    @Test
    void aNewRigByTheFormIsMarkedWhereItIsGuessed() {
        press(KeyCode.N);
        answer("bore", "75 mm");
        answer("wall", "2.2 mm");
        answer("stages", "3");
        answer("column-height", "250 furlongs");
        answer("column-diameter", "46 mm");
        answer("boiler-diameter", "160 mm");
        answer("charge", "150 mL");
        answer("power", "1.5 kW");
        answer("works-at", "1.2 kW");
        make();
        VBox height = open.find("new-column-height", VBox.class);
        assertThat(String.join(" ", OpenWindow.words(height))).contains("furlongs", "Height of the column");
        answer("column-height", "250 mm");
        make();
        open.until("the rig", () -> !open.window().session().rig().guesses().isEmpty());
        assertThat(open.notices()).contains("of its fields are guesses");
        assertThat(open.window().session().rig().stages()).hasSize(3);
        open.onWindowsThread(() -> open.find("part-stages", TitledPane.class).setExpanded(true));
        assertThat(OpenWindow.words(open.find("stages[0].throatGap", VBox.class)))
                .contains("guess");
        type("stages[0].throatGap", "0.6 mm");
        assertThat(OpenWindow.words(open.find("stages[0].throatGap", VBox.class)))
                .doesNotContain("guess");
        open.answer();
    }

    private void answer(String key, String text) {
        TextInputControl input =
                (TextInputControl) open.find("new-" + key, VBox.class).lookup(".text-input");
        open.onWindowsThread(() -> input.setText(text));
    }

    private void make() {
        open.onWindowsThread(() -> open.find("new-make", Button.class).fire());
    }

    private static Margin.Status heat(RigAnswer answer) {
        return answer.check().margins().stream()
                .filter(margin -> margin.id() == MarginId.HEAT)
                .findFirst()
                .orElseThrow()
                .status();
    }

    /** Types into a field as a person does, and takes it over with Enter. */
    private void type(String path, String text) {
        open.onWindowsThread(() -> {
            if (open.lookup(path).isEmpty()) {
                String part = path.replaceAll("[\\[.].*", "");
                open.find("part-" + part, TitledPane.class).setExpanded(true);
            }
        });
        TextInputControl input = input(path);
        open.onWindowsThread(() -> {
            input.requestFocus();
            input.setText(text);
        });
        robot.push(KeyCode.ENTER);
        open.onWindowsThread(() -> {});
    }

    private void press(KeyCode key) {
        robot.push(KeyCode.CONTROL, key);
        open.onWindowsThread(() -> {});
    }
}
