package boilwright.dashboard;

import static org.assertj.core.api.Assertions.assertThat;

import boilwright.rig.Cooling;
import boilwright.rig.ElementKind;
import boilwright.rig.Rig;
import boilwright.rig.Supply;
import boilwright.rig.SupplyKind;
import boilwright.rig.file.RigWriter;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Supply and elements of the cooling edited in the window. */
class WindowCoolingTest extends AtTheWindow {
    private static final String CURVE = "cooling.supply.pumpCurve";

    @BeforeEach
    void begin() {
        share("mirror-club", PageName.RIG);
        open.onWindowsThread(() -> open.find("part-cooling", TitledPane.class).setExpanded(true));
    }

    @Test
    void everyKindOfSupplyCanBeChosenAndUndone() {
        Rig before = rig();
        for (SupplyKind kind : SupplyKind.values()) {
            choose("cooling.supply.kind", kind.ordinal());
            assertThat(rig().cooling().supply().kind()).isEqualTo(kind);
            assertThat(message("cooling.supply.kind")).isEmpty();
            assertThat(open.lookup("cooling.supply.flow").isPresent()).isEqualTo(kind == SupplyKind.GIVEN_FLOW);
            assertThat(open.lookup("cooling.supply.setPoint").isPresent()).isEqualTo(kind == SupplyKind.CHILLER);
            assertThat(open.lookup("cooling.supply.finPitch").isPresent()).isEqualTo(kind == SupplyKind.FINS_AND_FAN);
            boolean pump = kind == SupplyKind.CHILLER || kind == SupplyKind.TANK;
            assertThat(open.lookup(CURVE).isPresent()).isEqualTo(pump);
        }
        open.until("nothing more to undo", () -> {
            open.window().act(Action.UNDO);
            return !open.window().session().isDirty();
        });
        assertThat(RigWriter.write(rig())).isEqualTo(RigWriter.write(before));
        assertThat(((ComboBox<?>) open.find("cooling.supply.kind", VBox.class).lookup(".combo-box"))
                        .getSelectionModel()
                        .getSelectedIndex())
                .isEqualTo(SupplyKind.CHILLER.ordinal());
    }

    @Test
    void figuresOfTheSupplyAreTypedLikeAnyOther() {
        type("cooling.supply.setPoint", "16 degC");
        type("cooling.supply.pumpHeat", "45 W");
        Supply.Chiller chiller = (Supply.Chiller) rig().cooling().supply();
        assertThat(chiller.temperatureK()).isEqualTo(289.15);
        assertThat(chiller.pump().heatW()).isEqualTo(45);
        type("cooling.supply.setPoint", "2 degC");
        assertThat(message("cooling.supply.setPoint")).contains("A rating holds within 15.0 K");
        assertThat(rig().cooling().supply().temperatureK()).isEqualTo(289.15);
        type("cooling.elements[1].flowAtOneBar", "0.5 L/min");
        assertThat(message("cooling.elements[1].flowAtOneBar")).contains("did you mean 0.5 m3/h?");
        aCurveIsEditedAsLinesOfText();
    }

    private void aCurveIsEditedAsLinesOfText() {
        TextArea area = (TextArea) open.find(CURVE, VBox.class).lookup(".text-area");
        assertThat(area.getText()).startsWith("0 L/min, 3.6 m\n1 L/min, 3.2 m\n");
        retype(CURVE, "0 L/min, 5 m\n\n4 L/min; 1.5 m\n6 L/min, 0 m\n");
        assertThat(message(CURVE)).isEmpty();
        Supply.Pumped pumped = (Supply.Pumped) rig().cooling().supply();
        assertThat(pumped.pump().curve()).hasSize(3);
        assertThat(pumped.pump().curve().get(1).headM()).isEqualTo(1.5);
        for (String bad : List.of(
                "0 L/min, 5 m",
                "0 L/min, 5 m\n4 L/min, 6 m",
                "0 L/min 5 m\n4 L/min, 2 m",
                "0 L/min, 5 kg\n4 L/min, 2 m",
                "0, 5\n4, 2",
                "")) {
            retype(CURVE, bad);
            assertThat(message(CURVE)).as(bad).isNotEmpty();
            assertThat(((Supply.Pumped) rig().cooling().supply()).pump().curve())
                    .hasSize(3);
        }
        retype(CURVE, "0 L/min, 90 m\n4 L/min, 2 m");
        assertThat(message(CURVE)).contains("did you mean 90 mm?").doesNotContain("--accept");
        press(open.find(CURVE, VBox.class), "It is meant");
        assertThat(((Supply.Pumped) rig().cooling().supply())
                        .pump()
                        .curve()
                        .get(0)
                        .headM())
                .isEqualTo(90);
    }

    @Test
    void aRatingBecomesATableAndATableARating() {
        add("cooling.supply", "Capacity table");
        Supply.Chiller tabled = (Supply.Chiller) rig().cooling().supply();
        assertThat(tabled.capacity()).isInstanceOf(Supply.CapacityTable.class);
        assertThat(open.lookup("cooling.supply.capacity")).isEmpty();
        retype(
                "cooling.supply.capacityTable",
                "15 degC, 20 degC, 1.3 kW\n25 degC, 20 degC, 1.7 kW\n15 degC, 30 degC, 1.1 kW\n25 degC, 30 degC, 1.5 kW");
        assertThat(message("cooling.supply.capacityTable")).isEmpty();
        add("cooling.supply", "Rated capacity");
        Supply.RatedCapacity rated =
                (Supply.RatedCapacity) ((Supply.Chiller) rig().cooling().supply()).capacity();
        assertThat(rated.ratedW()).isEqualTo(1300);
    }

    @Test
    void elementsAreAddedMovedNamedTakenAwayAndOfAnotherKind() {
        addTo("cooling.elements", ElementKind.RISE);
        assertThat(rig().cooling().elements()).hasSize(6);
        type("cooling.elements[5].height", "-0.4 m");
        assertThat(rig().cooling().elements().get(5)).isEqualTo(new Cooling.Rise(-0.4, Cooling.Place.PLAIN));
        pressEntry(5, "Earlier");
        assertThat(rig().cooling().elements().get(4)).isInstanceOf(Cooling.Rise.class);
        add("cooling.elements[4]", "Name");
        type("cooling.elements[4].name", "down to the floor");
        assertThat(OpenWindow.words(open.find("part-cooling", TitledPane.class)))
                .contains("Cooling elements: down to the floor");
        add("cooling.elements[2]", "Branch");
        assertThat(rig().cooling().elements())
                .extracting(element -> element.place().branch())
                .containsExactly("", "", "A", "B", "", "");
        type("cooling.elements[3].branch", "");
        assertThat(rig().cooling().elements())
                .extracting(element -> element.place().branch())
                .containsOnly("");
        pressEntry(4, "Take away");
        assertThat(rig().cooling().elements()).hasSize(5);
        choose("cooling.elements[0].kind", ElementKind.VALVE.ordinal());
        assertThat(rig().cooling().elements().get(0)).isInstanceOf(Cooling.Valve.class);
        choose("cooling.elements[2].kind", ElementKind.JACKET.ordinal());
        assertThat(message("cooling.elements[2].kind")).contains("covered twice");
        assertThat(rig().cooling().elements().get(2)).isInstanceOf(Cooling.CapCoil.class);
    }

    @Test
    void waterThatCannotBeLiftedIsSaidInWords() {
        open.answer();
        addTo("cooling.elements", ElementKind.RISE);
        type("cooling.elements[5].height", "8 m");
        open.until(
                "the refusal",
                () -> String.join(" ", OpenWindow.words(open.window().frame())).contains("8.00 m"));
        type("cooling.elements[5].height", "0.2 m");
        open.answer();
    }

    private Rig rig() {
        return open.window().session().rig();
    }

    private void choose(String path, int index) {
        ComboBox<?> box = (ComboBox<?>) open.find(path, VBox.class).lookup(".combo-box");
        open.onWindowsThread(() -> box.getSelectionModel().select(index));
    }

    private void type(String path, String text) {
        TextInputControl input = input(path);
        open.onWindowsThread(() -> {
            input.requestFocus();
            input.setText(text);
        });
        robot.push(KeyCode.ENTER);
        open.onWindowsThread(() -> {});
    }

    /** Types over several lines and leaves with Tab, as a person does. */
    private void retype(String path, String text) {
        TextInputControl input = input(path);
        open.onWindowsThread(() -> {
            input.requestFocus();
            input.setText(text);
        });
        robot.push(KeyCode.TAB);
        open.onWindowsThread(() -> {});
    }

    private void press(Node below, String words) {
        Button button = below.lookupAll(".button").stream()
                .filter(node -> node instanceof Button one && one.getText().equals(words))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow();
        open.onWindowsThread(button::fire);
    }

    /** Presses what stands below the rows of an element. */
    private void pressEntry(int index, String words) {
        press(open.find("cooling.elements[" + index + "].kind", VBox.class).getParent(), words);
    }

    /** Takes something from the menu of what may be added to a part. */
    private void add(String part, String title) {
        fire(open.find("add-" + part, MenuButton.class), title);
    }

    private void addTo(String list, ElementKind kind) {
        MenuButton menu = open.find("add-" + list, MenuButton.class);
        open.onWindowsThread(() -> menu.getItems().get(kind.ordinal()).fire());
    }

    private void fire(MenuButton menu, String title) {
        MenuItem item = menu.getItems().stream()
                .filter(one -> one.getText().equals(title))
                .findFirst()
                .orElseThrow();
        open.onWindowsThread(item::fire);
    }
}
