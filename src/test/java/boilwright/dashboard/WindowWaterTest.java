package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import boilwright.Counts;
import boilwright.dashboard.chart.SeriesChart;
import boilwright.rig.Cooling;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.GridPane;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The water page with a person at it. */
class WindowWaterTest extends AtTheWindow {
    private static final double LITRE_PER_MIN = 1e-3 / 60;

    @BeforeEach
    void begin() {
        share("mirror-club", PageName.WATER);
        shown();
        open.onWindowsThread(() -> open.find("water-try-back", Button.class).fire());
        open.until(
                "the rig's own values",
                () -> whatIf().contains("18.0 degC")
                        && open.find("water-take", Button.class).isDisabled()
                        && slider("water-try-flow").getValue() < 2 * LITRE_PER_MIN);
    }

    private void shown() {
        open.answer();
        open.until(
                "the what-if line",
                () -> open.lookup("water-what-if")
                        .map(node -> !((Label) node).getText().isEmpty())
                        .orElse(false));
    }

    private String whatIf() {
        return open.find("water-what-if", Label.class).getText();
    }

    private Slider slider(String id) {
        return open.find(id, Slider.class);
    }

    private void slide(String id, double value) {
        String before = whatIf();
        open.onWindowsThread(() -> slider(id).setValue(value));
        open.until("another what-if line", () -> !whatIf().equals(before));
    }

    private void edit(Cooling cooling) {
        Rig rig = open.window().session().rig().withCooling(cooling);
        open.onWindowsThread(() -> open.window().session().edit("cooling", before -> rig));
        open.answer();
    }

    @Test
    void everyDemoShowsItsCircuitInBothThemes() {
        for (String demo :
                List.of("mirror-club", "teaching-lab", "neon-workshop").subList(0, Counts.of(2, 3))) {
            open.onWindowsThread(() -> open.window().desk().openDemo(demo));
            open.until(demo, () -> open.window().session().rig().equals(OpenWindow.demo(demo)));
            open.answer();
            Rig rig = open.window().session().rig();
            int last = rig.cooling().elements().size() - 1;
            String flow = String.format(
                    java.util.Locale.ROOT,
                    "%.2f",
                    open.answer().check().steady().flow().volumeFlowM3PerS() / LITRE_PER_MIN);
            open.until(
                    demo,
                    () -> open.lookup("water-element-" + last).isPresent() && whatIf().contains(flow.substring(0, 3)));
            assertThat(open.lookup("water-element-" + (last + 1))).isEmpty();
            Node box = open.find("water-element-0", Node.class);
            assertThat(box.isFocusTraversable()).isTrue();
            assertThat(box.getAccessibleText()).contains("water in", "flow", "pressure lost");
            assertThat(OpenWindow.words(open.window().frame().pageShown()))
                    .anyMatch(words -> words.startsWith("Caution: Water shut in"));
            boolean tap = rig.cooling().supply().kind() == SupplyKind.TAP;
            assertThat(OpenWindow.words(open.find("water-circuit", Node.class)).contains("to the drain"))
                    .isEqualTo(tap);
            assertThat(open.find("water-pump-chart", SeriesChart.class).data().spots())
                    .hasSize(1);
            open.act(Action.THEME);
        }
    }

    @Test
    void slidersTryValuesAndLeaveTheRigAlone() {
        Rig before = open.window().session().rig();
        assertThat(open.find("water-take", Button.class).isDisabled()).isTrue();
        slide("water-try-flow", 3 * LITRE_PER_MIN);
        assertThat(whatIf()).contains("3.00 L/min");
        assertThat(open.find("water-take", Button.class).isDisabled()).isTrue();
        assertThat(open.find("water-take", Button.class).getAccessibleHelp()).contains("follows from its pressure");
        slide("water-try-temperature", 295.15);
        assertThat(whatIf()).contains("22.0 degC");
        assertThat(open.window().session().rig()).isSameAs(before);
        assertThat(open.window().session().isDirty()).isFalse();
        open.onWindowsThread(() -> open.find("water-try-back", Button.class).fire());
        open.until("the rig's own", () -> whatIf().contains("18.0 degC"));
        assertThat(slider("water-try-flow").getValue()).isLessThan(2 * LITRE_PER_MIN);
    }

    @Test
    void aSetPointIsTakenIntoTheRigAndUndone() {
        Rig before = open.window().session().rig();
        slide("water-try-temperature", 295.1734);
        open.onWindowsThread(() -> open.find("water-take", Button.class).fire());
        Supply.Chiller chiller =
                (Supply.Chiller) open.window().session().rig().cooling().supply();
        assertThat(chiller.temperatureK()).isCloseTo(295.15, within(1e-9));
        assertThat(open.window().session().undoNameProperty().get()).contains("22.0 degC");
        open.answer();
        open.until(
                "the new rig's own values",
                () -> open.find("water-take", Button.class).isDisabled() && whatIf().contains("22.0 degC"));
        open.act(Action.UNDO);
        assertThat(open.window().session().rig()).isEqualTo(before);
        open.answer();
        open.until("the old values", () -> whatIf().contains("18.0 degC"));
    }

    @Test
    void flowAndTemperatureOfAMeasuredFlowAreTakenInOneEdit() {
        Cooling cooling = open.window().session().rig().cooling();
        edit(new Cooling(new Supply.GivenFlow(291.15, 2 * LITRE_PER_MIN, OptionalDouble.of(1800)), cooling.elements()));
        open.until("the measured flow", () -> whatIf().contains("2.00 L/min"));
        slide("water-try-flow", 1.5 * LITRE_PER_MIN);
        slide("water-try-temperature", 288.15);
        open.onWindowsThread(() -> open.find("water-take", Button.class).fire());
        Supply.GivenFlow taken =
                (Supply.GivenFlow) open.window().session().rig().cooling().supply();
        assertThat(taken.flowM3PerS()).isCloseTo(1.5 * LITRE_PER_MIN, within(1e-12));
        assertThat(taken.temperatureK()).isCloseTo(288.15, within(1e-9));
        open.act(Action.UNDO);
        assertThat(open.window().session().rig().cooling().supply())
                .isEqualTo(new Supply.GivenFlow(291.15, 2 * LITRE_PER_MIN, OptionalDouble.of(1800)));
        open.answer();
    }

    @Test
    void everyOtherSupplyStandsBesideThePresentOne() {
        ComboBox<SupplyKind> box = kinds();
        assertThat(box.getItems()).hasSize(4).doesNotContain(SupplyKind.CHILLER);
        for (SupplyKind kind : List.copyOf(box.getItems())) {
            open.onWindowsThread(() -> box.setValue(kind));
            open.until(
                    "the comparison with " + kind,
                    () -> table().contains(box.getConverter().toString(kind)));
            assertThat(table()).contains("Chiller, as in the rig", "water out", "duty", "capacity");
        }
        assertThat(open.window().session().isDirty()).isFalse();
    }

    @SuppressWarnings("unchecked")
    private ComboBox<SupplyKind> kinds() {
        return open.find("water-other", ComboBox.class);
    }

    private List<String> table() {
        return OpenWindow.words(open.find("water-other-table", GridPane.class));
    }

    @Test
    void finsAndFanHaveNoWaterToTry() {
        edit(new Cooling(
                new Supply.FinsAndFan(293.15, 3, 0.004, 0.02, 0.001, boilwright.rig.Material.ALUMINIUM), List.of()));
        open.until("air", () -> slider("water-try-flow").isDisabled());
        assertThat(slider("water-try-temperature").isDisabled()).isTrue();
        assertThat(open.find("water-pump-chart", SeriesChart.class).isVisible()).isFalse();
        assertThat(open.find("water-verdict", Label.class).getText()).startsWith("No water");
        assertThat(open.lookup("water-element-0")).isEmpty();
    }

    @Test
    void everythingIsReachedByKeyboard() {
        open.onWindowsThread(() -> open.find("water-supply", Node.class).requestFocus());
        Set<String> reached = new LinkedHashSet<>();
        for (int i = 0; i < 24; i++) {
            for (Node node = open.window().scene().getFocusOwner(); node != null; node = node.getParent()) {
                if (node.getId() != null) {
                    reached.add(node.getId());
                }
            }
            robot.push(KeyCode.TAB);
        }
        assertThat(reached)
                .contains(
                        "water-supply",
                        "water-element-0",
                        "water-element-4",
                        "water-try-temperature",
                        "water-try-flow",
                        "water-pump-chart",
                        "water-duty-chart",
                        "water-other");
    }
}
