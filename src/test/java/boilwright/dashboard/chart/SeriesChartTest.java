package boilwright.dashboard.chart;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.dashboard.Settled;
import boilwright.units.UnitSpelling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleAttribute;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ScrollEvent;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The chart under mouse, keys and exports. */
class SeriesChartTest extends AtAChart {
    @Test
    void keysZoomAboutTheCursorAndShowTheWholeAgain() {
        focus();
        cursor(1800);
        push(KeyCode.PLUS, KeyCode.PLUS, KeyCode.PLUS);
        View near = view();
        assertThat(near.xHigh() - near.xLow()).isCloseTo(3600 / Math.pow(1.25, 3), Offset.offset(1e-6));
        assertThat((near.xHigh() + near.xLow()) / 2).isCloseTo(1800, Offset.offset(1e-6));
        push(KeyCode.MINUS);
        assertThat(view().xHigh() - view().xLow()).isCloseTo(3600 / Math.pow(1.25, 2), Offset.offset(1e-6));
        push(KeyCode.DIGIT0);
        assertThat(view()).isEqualTo(View.WHOLE);
        push(KeyCode.MINUS);
        assertThat(view()).isEqualTo(View.WHOLE);
    }

    @Test
    void arrowsMoveTheCursorAndTheViewGoesAlong() {
        focus();
        cursor(1800);
        push(KeyCode.RIGHT);
        double onePx = pane.plan().x().si(200) - pane.plan().x().si(199);
        assertThat(chart.cursorXProperty().get()).isCloseTo(1800 + 2 * onePx, Offset.offset(1e-6));
        push(KeyCode.LEFT, KeyCode.LEFT);
        assertThat(chart.cursorXProperty().get()).isCloseTo(1800 - 2 * onePx, Offset.offset(1e-6));
        push(KeyCode.END);
        assertThat(chart.cursorXProperty().get()).isEqualTo(3600);
        push(KeyCode.RIGHT);
        assertThat(chart.cursorXProperty().get()).isEqualTo(3600);
        cursor(1000);
        ChartStage.on(() -> {
            pane.viewProperty().set(View.WHOLE.withX(900, 1100));
            return null;
        });
        cursor(view().xHigh() - 1);
        double before = view().xHigh();
        push(KeyCode.RIGHT, KeyCode.RIGHT);
        assertThat(view().xHigh()).isGreaterThan(before);
        assertThat(chart.cursorXProperty().get()).isBetween(view().xLow(), view().xHigh());
        robot.press(KeyCode.SHIFT);
        push(KeyCode.LEFT);
        robot.release(KeyCode.SHIFT);
        assertThat(view().xHigh()).isLessThan(before + 100);
    }

    @Test
    void aDraggedBoxIsZoomedIntoAndADoubleClickShowsTheWhole() {
        cursor(10);
        Scale x = pane.plan().x();
        drag(x.px(1000), x.px(2000));
        assertThat(view().xLow()).isCloseTo(1000, Offset.offset(15.0));
        assertThat(view().xHigh()).isCloseTo(2000, Offset.offset(15.0));
        assertThat(view().yLow()).isNaN();
        assertThat(chart.cursorXProperty().get()).isEqualTo(10);
        robot.doubleClickOn(at(1500));
        settle();
        assertThat(view()).isEqualTo(View.WHOLE);
    }

    @Test
    void theWheelZoomsOnlyWhileTheChartHasTheFocus() {
        ChartStage.on(() -> {
            open.scene().lookup("#chart-more").requestFocus();
            return null;
        });
        turn(900, 40);
        assertThat(view()).isEqualTo(View.WHOLE);
        focus();
        turn(900, 40);
        turn(900, 40);
        assertThat(view()).isNotEqualTo(View.WHOLE);
        assertThat(view().xLow()).isLessThan(900);
        assertThat(view().xHigh()).isGreaterThan(900);
        focus();
        for (int i = 0; i < 6; i++) {
            turn(900, -40);
        }
        assertThat(view()).isEqualTo(View.WHOLE);
    }

    @Test
    void theCursorFollowsWhatItIsBoundToAndLeadsIt() {
        DoubleProperty band = new SimpleDoubleProperty(700);
        ChartStage.on(() -> {
            chart.cursorXProperty().bindBidirectional(band);
            return null;
        });
        assertThat(chart.cursorXProperty().get()).isEqualTo(700);
        robot.clickOn(at(2400));
        settle();
        assertThat(band.get()).isCloseTo(2400, Offset.offset(10.0));
        drag(pane.plan().x().px(band.get()), pane.plan().x().px(600));
        assertThat(band.get()).isCloseTo(600, Offset.offset(10.0));
        assertThat(view()).isEqualTo(View.WHOLE);
        ChartStage.on(() -> {
            band.set(1200);
            return null;
        });
        assertThat(chart.cursorXProperty().get()).isEqualTo(1200);
        String words = (String) pane.queryAccessibleAttribute(AccessibleAttribute.TEXT);
        Series one = DATA.series().get(0);
        assertThat(words)
                .contains("curve A", "Limit: oil: at most 207 degC", "At the cursor, 0:20:00")
                .contains("curve A "
                        + ChartWords.value(one.y()[400], pane.plan().choice().yUnit()));
    }

    @Test
    void theTableShowsTheSameNumbersAtTheCursor() {
        cursor(1200);
        robot.clickOn("#chart-table");
        settle();
        TableView<?> table = (TableView<?>) chart.lookup(".series-table");
        assertThat(table.isVisible()).isTrue();
        assertThat(pane.isVisible()).isFalse();
        assertThat(table.getItems()).hasSize(1201);
        assertThat(table.getColumns()).hasSize(4);
        assertThat(table.getColumns().get(1).getText()).isEqualTo("curve A\ndegC");
        int row = table.getSelectionModel().getSelectedIndex();
        assertThat(table.getColumns().get(0).getCellData(row)).isEqualTo("0:20:00");
        UnitSpelling unit = pane.plan().choice().yUnit();
        for (int k = 0; k < 3; k++) {
            String shown = ChartWords.value(DATA.series().get(k).y()[row], unit);
            assertThat(table.getColumns().get(k + 1).getCellData(row) + " degC").isEqualTo(shown);
        }
        robot.clickOn("#chart-table");
        settle();
        assertThat(pane.isVisible()).isTrue();
    }

    @Test
    void anotherUnitIsUsedEverywhereAndStaysWithNewNumbers() {
        ComboBox<?> units = chart.lookupAll(".series-unit").stream()
                .map(node -> (ComboBox<?>) node)
                .filter(javafx.scene.Node::isVisible)
                .findFirst()
                .orElseThrow();
        ChartStage.on(() -> {
            units.getSelectionModel().select(1);
            return null;
        });
        assertThat(pane.plan().choice().yUnit().text())
                .isEqualTo(units.getItems().get(1).toString());
        ChartStage.on(() -> {
            chart.setData(ChartScene.temperatures(3, 50));
            return null;
        });
        assertThat(pane.plan().choice().yUnit().text())
                .isEqualTo(units.getItems().get(1).toString());
    }

    @Test
    void everyPartIsReachedByKeyboard() {
        ChartStage.on(() -> {
            chart.lookupAll(".combo-box").stream()
                    .filter(node -> node.isVisible())
                    .findFirst()
                    .orElseThrow()
                    .requestFocus();
            return null;
        });
        push(KeyCode.TAB);
        assertThat(open.scene().getFocusOwner()).isInstanceOf(ToggleButton.class);
        push(KeyCode.TAB);
        assertThat(open.scene().getFocusOwner()).isInstanceOf(MenuButton.class);
        push(KeyCode.TAB);
        assertThat(open.scene().getFocusOwner()).isSameAs(pane);
    }

    @Test
    void whatWasChosenOfSeveralChartsStaysWhenTheNumbersChange() {
        ChartData other =
                ChartData.of("Other", DATA.x(), DATA.y(), DATA.series().subList(0, 1));
        ChartStage.on(() -> {
            chart.setData(List.of(DATA, other));
            return null;
        });
        assertThat(chart.data()).isSameAs(DATA);
        ComboBox<?> titles = (ComboBox<?>) chart.lookup(".series-titles");
        ChartStage.on(() -> {
            titles.getSelectionModel().select(1);
            return null;
        });
        assertThat(chart.data()).isSameAs(other);
        ChartData newer =
                ChartData.of("Other", DATA.x(), DATA.y(), DATA.series().subList(1, 2));
        ChartStage.on(() -> {
            chart.setData(List.of(DATA, newer));
            return null;
        });
        assertThat(chart.data()).isSameAs(newer);
        assertThat(titles.isVisible()).isTrue();
    }

    @Test
    void filesAreWrittenAndTheirPlaceIsSaid() throws Exception {
        for (ChartFormat format : ChartFormat.values()) {
            Path file = folder.resolve("chart");
            Path written = folder.resolve("chart." + format.ending());
            export(format, file);
            until("the file is there", () -> told().contains(written.toString()));
            assertThat(Files.size(written)).isGreaterThan(1000);
        }
        try (Stream<Path> all = Files.list(folder)) {
            assertThat(all).hasSize(3);
        }
    }

    @Test
    void aPlaceThatTakesNoFileIsSaidInWords() throws Exception {
        Path gone = folder.resolve("gone").resolve("chart.svg");
        export(ChartFormat.SVG, gone);
        until("refusal", () -> told().contains("was not written: its folder does not exist"));
        Path file = Files.writeString(folder.resolve("plain"), "x");
        export(ChartFormat.PNG, file.resolve("chart.png"));
        until("refusal", () -> told().contains("plain") && told().contains("was not written"));
        export(ChartFormat.CSV, Files.createDirectory(folder.resolve("folder.csv")));
        until("refusal", () -> told().contains("it is a folder"));
        readOnly();
        ChartStage.on(() -> {
            chart.filesProperty().set((name, format) -> Optional.empty());
            chart.export(ChartFormat.CSV);
            return null;
        });
        assertThat(faults).isEmpty();
    }

    /** A superuser may write anywhere but into the files of the kernel; anyone else not into a locked folder. */
    private void readOnly() throws IOException {
        Path locked = Files.createDirectory(folder.resolve("locked"));
        boolean took = locked.toFile().setWritable(false) && !Files.isWritable(locked);
        Path place = took ? locked : Path.of("/proc");
        export(ChartFormat.SVG, place.resolve("chart.svg"));
        until("refusal", () -> told().contains(place.toString()) && told().contains("was not written"));
        assertThat(locked.toFile().setWritable(true)).isTrue();
    }

    private void export(ChartFormat format, Path file) {
        ChartStage.on(() -> {
            chart.filesProperty().set((name, kind) -> {
                assertThat(name).isEqualTo("temperatures." + format.ending());
                return Optional.of(file);
            });
            chart.export(format);
            return null;
        });
    }

    private String told() {
        return ((Label) chart.lookup(".series-told")).getText();
    }

    private void until(String what, java.util.function.BooleanSupplier reached) {
        try {
            WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> ChartStage.on(reached::getAsBoolean));
        } catch (java.util.concurrent.TimeoutException e) {
            throw new AssertionError("waited in vain for " + what + "; told: " + told(), e);
        }
        settle();
    }

    private void focus() {
        ChartStage.on(() -> {
            pane.requestFocus();
            return null;
        });
    }

    private void cursor(double place) {
        ChartStage.on(() -> {
            chart.cursorXProperty().set(place);
            return null;
        });
    }

    private void push(KeyCode... keys) {
        for (KeyCode key : keys) {
            robot.push(key);
            settle();
        }
    }

    private void drag(double fromPx, double toPx) {
        double middle = (pane.plan().plot().top() + pane.plan().plot().bottom()) / 2;
        robot.moveTo(pane.localToScreen(fromPx, middle));
        robot.press(MouseButton.PRIMARY);
        robot.moveTo(pane.localToScreen((fromPx + toPx) / 2, middle));
        robot.moveTo(pane.localToScreen(toPx, middle));
        robot.release(MouseButton.PRIMARY);
        settle();
    }

    /** Turns the wheel; the robot of the screenless platform has none. */
    private void turn(double place, double delta) {
        ChartStage.on(() -> {
            Point2D on = pane.screenToLocal(at(place));
            pane.fireEvent(new ScrollEvent(
                    ScrollEvent.SCROLL,
                    on.getX(),
                    on.getY(),
                    0,
                    0,
                    false,
                    false,
                    false,
                    false,
                    false,
                    false,
                    0,
                    delta,
                    0,
                    delta,
                    ScrollEvent.HorizontalTextScrollUnits.NONE,
                    0,
                    ScrollEvent.VerticalTextScrollUnits.NONE,
                    0,
                    0,
                    null));
            return null;
        });
    }

    private Point2D at(double place) {
        Box plot = pane.plan().plot();
        return pane.localToScreen(pane.plan().x().px(place), (plot.top() + plot.bottom()) / 2);
    }

    private View view() {
        return pane.viewProperty().get();
    }

    private static void settle() {
        Settled.windows();
    }
}
