package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.chart.SeriesChart;
import boilwright.dashboard.fluids.DetailLine;
import boilwright.dashboard.fluids.FluidRow;
import boilwright.dashboard.work.RigAnswer;
import boilwright.rig.Rig;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableColumn.SortType;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The fluids page with a person at it. */
class WindowFluidsTest extends AtTheWindow {
    @BeforeEach
    void begin() {
        share("teaching-lab", PageName.FLUIDS);
        open.until("the fluids", () -> !table().getItems().isEmpty());
        ToggleButton figures = open.find("fluids-view-figures", ToggleButton.class);
        if (!figures.isSelected()) {
            open.onWindowsThread(figures::fire);
        }
        choose(open.window().session().rig().fluidId());
    }

    /** Another window for a test that leaves behind what stays while the window is open: a fluid added, an order. */
    private void alone() {
        endShared();
        open = OpenWindow.on(
                OpenWindow.demo("teaching-lab"), Optional.empty(), folder.resolve("state"), PageName.FLUIDS);
        open.until("the fluids", () -> !table().getItems().isEmpty());
    }

    @Test
    void aFluidIsUsedInTheRigAndTakenBack() {
        RigAnswer before = open.answer();
        Rig rig = open.window().session().rig();
        assertThat(selected()).isEqualTo(rig.fluidId());
        assertThat(open.find("fluids-use", Button.class).isDisabled()).isTrue();
        String other = rig.fluidId().equals("mercury") ? "704-type" : "mercury";
        choose(other);
        assertThat(open.find("fluids-title", Label.class).getText())
                .isEqualTo(OpenWindow.FLUIDS.find(other).title());
        assertThat(open.find("fluids-caution", Label.class).getText()).contains("poisonous");
        press("fluids-use");
        assertThat(open.window().session().rig().fluidId()).isEqualTo(other);
        assertThat(open.window().session().undoNameProperty().get()).contains("Mercury");
        assertThat(open.find("fluids-use", Button.class).isDisabled()).isTrue();
        RigAnswer after = open.answer();
        assertThat(after.check().verdict()).isNotEqualTo(before.check().verdict());
        assertThat(OpenWindow.words(open.window().frame()))
                .contains(after.check().verdict());
        open.act(Action.UNDO);
        assertThat(open.window().session().rig()).isEqualTo(rig);
        assertThat(open.find("fluids-use", Button.class).isDisabled()).isFalse();
        assertThat(open.answer().check().verdict()).isEqualTo(before.check().verdict());
        assertThat(selected()).isEqualTo(other);
    }

    @Test
    void boilingFollowsWhatThePumpNeeds() {
        double needed = open.answer().check().needed().state().boilerPressurePa();
        assertThat(table().getItems()).isEqualTo(FluidRow.all(OpenWindow.FLUIDS, needed));
    }

    @Test
    void sortsByAnyFigureAndKeepsTheChoice() {
        alone();
        choose("mercury");
        sort("fluids.column.vapour", SortType.DESCENDING);
        assertThat(table().getItems().get(0).id()).isEqualTo("mercury");
        assertThat(selected()).isEqualTo("mercury");
        sort("fluids.column.bulk", SortType.ASCENDING);
        assertThat(table().getItems().get(6).id()).isEqualTo("mercury");
        sort("fluids.column.bulk", SortType.DESCENDING);
        assertThat(table().getItems().get(6).id()).isEqualTo("mercury");
        open.answer();
        assertThat(table().getItems().get(6).id()).isEqualTo("mercury");
    }

    @Test
    void figuresFollowTheTemperatureAndTheChartsCursor() {
        wide();
        choose("704-type");
        enterTemperature("200 degC");
        assertThat(details()).contains("latent heat 205 kJ/kg");
        assertThat(chart().cursorXProperty().get()).isEqualTo(473.15);
        open.onWindowsThread(() -> chart().cursorXProperty().set(463.15));
        TextField field = open.find("fluids-temperature", TextField.class);
        assertThat(field.getText()).isEqualTo("190 degC");
        assertThat(details()).contains("latent heat 207 kJ/kg");
        enterTemperature("warm");
        assertThat(OpenWindow.words(open.window().frame().pageShown()))
                .anyMatch(words -> words.startsWith("\"warm\" has no number in front"));
        assertThat(details()).contains("latent heat 207 kJ/kg");
        enterTemperature("900 K");
        assertThat(details()).contains("latent heat not available at this temperature");
        press("fluids-temperature-room");
        assertThat(field.getText()).isEqualTo("20.0 degC");
        press("fluids-temperature-boiling");
        assertThat(field.getText()).isNotEqualTo("20.0 degC");
    }

    @Test
    void chartAndFiguresTakeTurnsInANarrowPage() {
        assertThat(open.lookup("fluids-details")).isPresent();
        open.onWindowsThread(
                () -> open.find("fluids-view-curves", ToggleButton.class).fire());
        assertThat(open.lookup("fluids-details")).isEmpty();
        assertThat(chart().data().series().get(0).title()).isEqualTo(selected());
        choose("mercury");
        assertThat(chart().data().series().get(0).title()).isEqualTo("mercury");
    }

    @Test
    void aBadFileIsRefusedWithEveryFaultAndNothingIsLost() throws IOException {
        open.answer();
        List<FluidRow> before = List.copyOf(table().getItems());
        openFile(good().replace("\"g/mol\"", "\"g/mole\"").replace("\"cas\"", "\"cass\""), "bad.json");
        open.until("the refusal", () -> said().contains("was not added"));
        assertThat(said()).contains("bad.json", "unknown field cass", "properties.molarMass.unit", "g/mole");
        assertThat(table().getItems()).isEqualTo(before);
        openFile("nonsense", "worse.json");
        open.until("the refusal", () -> said().contains("worse.json"));
        assertThat(said()).contains("is not valid JSON").doesNotContain("bad.json");
        openFile(good().replace("my-oil", "mercury"), "taken.json");
        open.until("the refusal", () -> said().contains("taken.json"));
        assertThat(said()).contains("that id is taken");
        openFile(good().replace("working fluid", "validation only"), "check.json");
        open.until("the refusal", () -> said().contains("check.json"));
        assertThat(said()).contains("fills no pump");
        open.willOpen(folder.resolve("absent.json"));
        press("fluids-open");
        open.until("the refusal", () -> said().contains("absent.json"));
        assertThat(said()).contains("cannot be read");
        assertThat(table().getItems()).isEqualTo(before);
        assertThat(open.window().session().isDirty()).isFalse();
    }

    @Test
    void aGoodFileJoinsTheTableAndCanBeUsed() throws IOException {
        alone();
        open.answer();
        openFile(good(), "oil.json");
        open.until("the fluid", () -> table().getItems().size() == 8);
        assertThat(said()).contains("oil.json", "--fluids DIR");
        assertThat(selected()).isEqualTo("my-oil");
        press("fluids-use");
        assertThat(open.window().session().rig().fluidId()).isEqualTo("my-oil");
        RigAnswer first = open.answer();
        assertThat(first.check().fluidTitle())
                .isEqualTo(OpenWindow.FLUIDS.find("704-type").title());
        openFile(good().replace("[205000, -240, 473.15]", "[220000, -240, 473.15]"), "oil.json");
        open.until("the fluid read anew", () -> said().contains("read anew"));
        open.until("an answer with the mended file", () -> {
            RigAnswer now = open.window().answering().answerProperty().get();
            return !now.check().dataVersion().equals(first.check().dataVersion());
        });
        assertThat(open.answer().check().needed().heatNeededW())
                .isGreaterThan(first.check().needed().heatNeededW());
        open.act(Action.PAGE_RIG);
        ComboBox<?> box = (ComboBox<?>) open.find("fluid", VBox.class).lookup(".combo-box");
        assertThat(box.getItems().stream().map(Object::toString)).contains("my-oil", "mercury");
        open.act(Action.UNDO);
        assertThat(open.window().session().rig().fluidId()).isNotEqualTo("my-oil");
        open.answer();
    }

    @Test
    void everythingIsReachedByKeyboard() {
        choose("mercury");
        open.onWindowsThread(() -> open.find("page-fluids", Node.class).requestFocus());
        Set<String> reached = new LinkedHashSet<>();
        for (int i = 0; i < 40; i++) {
            robot.push(KeyCode.TAB);
            for (Node node = open.window().scene().getFocusOwner(); node != null; node = node.getParent()) {
                if (node.getId() != null) {
                    reached.add(node.getId());
                }
            }
        }
        assertThat(reached)
                .contains(
                        "fluids-table",
                        "fluids-open",
                        "fluids-use",
                        "fluids-temperature",
                        "fluids-temperature-boiling",
                        "fluids-temperature-room",
                        "fluids-details",
                        "fluids-view-figures");
        open.onWindowsThread(() -> {
            table().requestFocus();
            table().getSelectionModel().select(0);
            table().getFocusModel().focus(0);
        });
        robot.push(KeyCode.DOWN);
        open.until(
                "the next fluid",
                () -> selected().equals(table().getItems().get(1).id()));
    }

    private void openFile(String content, String name) throws IOException {
        Path file = folder.resolve(name);
        Files.writeString(file, content, StandardCharsets.UTF_8);
        open.willOpen(file);
        press("fluids-open");
    }

    private static String good() throws IOException {
        Path file = Path.of("fluid-data", "704-type.json");
        return Files.readString(file, StandardCharsets.UTF_8).replace("\"704-type\"", "\"my-oil\"");
    }

    @SuppressWarnings("unchecked")
    private TableView<FluidRow> table() {
        return open.find("fluids-table", TableView.class);
    }

    private String selected() {
        return table().getSelectionModel().getSelectedItem().id();
    }

    private void choose(String id) {
        open.onWindowsThread(() -> table().getItems().stream()
                .filter(row -> row.id().equals(id))
                .forEach(table().getSelectionModel()::select));
    }

    private void sort(String column, SortType type) {
        TableColumn<FluidRow, ?> found = table().getColumns().stream()
                .filter(one -> column.equals(one.getId()))
                .findFirst()
                .orElseThrow();
        open.onWindowsThread(() -> {
            found.setSortType(type);
            table().getSortOrder().setAll(List.of(found));
            table().sort();
        });
    }

    /** Wide enough for figures and chart side by side. */
    private void wide() {
        open.onWindowsThread(() -> open.window().scene().getWindow().setWidth(1920));
        open.until("the chart", () -> open.lookup("fluids-chart").isPresent());
    }

    private void press(String id) {
        open.onWindowsThread(() -> open.find(id, Button.class).fire());
    }

    private void enterTemperature(String text) {
        TextField field = open.find("fluids-temperature", TextField.class);
        open.onWindowsThread(() -> {
            field.requestFocus();
            field.setText(text);
        });
        robot.push(KeyCode.ENTER);
        open.onWindowsThread(() -> {});
    }

    /** The lines of the details: title and figure. */
    private List<String> details() {
        ListView<?> list = open.find("fluids-details", ListView.class);
        return list.getItems().stream()
                .map(DetailLine.class::cast)
                .map(line -> line.title() + " " + line.value())
                .toList();
    }

    private SeriesChart chart() {
        return (SeriesChart) open.find("fluids-chart", Node.class);
    }

    private String said() {
        return String.join("\n", OpenWindow.words(open.find("fluids-own", VBox.class)));
    }
}
