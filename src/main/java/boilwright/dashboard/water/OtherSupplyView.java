package boilwright.dashboard.water;

import boilwright.answers.Asked;
import boilwright.answers.WaterTrial;
import boilwright.dashboard.session.SupplyDefaults;
import boilwright.dashboard.text.WindowText;
import boilwright.dashboard.work.Latest;
import boilwright.numerics.CancelToken;
import boilwright.rig.Rig;
import boilwright.rig.SupplyKind;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The rig's supply and one of another kind, figure by figure. */
final class OtherSupplyView extends VBox {
    private final ComboBox<SupplyKind> kinds = new ComboBox<>();
    private final GridPane grid = new GridPane();
    private final Label message = new Label();
    private final Latest latest;
    private Asked asked;
    private Rig rig;
    private boolean quiet;

    OtherSupplyView(Latest latest) {
        this.latest = latest;
        getStyleClass().add("other-supply");
        kinds.setId("water-other");
        kinds.setConverter(new Words());
        kinds.setAccessibleText(WindowText.say("water.other.choose"));
        kinds.valueProperty().addListener((property, before, now) -> request());
        Label choose = new Label(WindowText.say("water.other.choose"));
        choose.setLabelFor(kinds);
        HBox head = new HBox(choose, kinds);
        head.getStyleClass().add("field-line");
        head.setAlignment(Pos.CENTER_LEFT);
        Label note = new Label(WindowText.say("water.other.note"));
        note.setWrapText(true);
        note.setMinHeight(USE_PREF_SIZE);
        note.getStyleClass().add("basis");
        grid.setId("water-other-table");
        grid.getStyleClass().add("figures");
        ColumnConstraints names = new ColumnConstraints();
        ColumnConstraints present = new ColumnConstraints();
        ColumnConstraints other = new ColumnConstraints();
        other.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().setAll(names, present, other);
        message.setWrapText(true);
        message.getStyleClass().add("field-message");
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        getChildren().addAll(head, grid, message, note);
    }

    /** Compares with this rig's supply from now on. */
    void begin(WaterFound found) {
        asked = found.water().check().asked();
        rig = asked.rig();
        SupplyKind own = rig.cooling().supply().kind();
        List<SupplyKind> others =
                Arrays.stream(SupplyKind.values()).filter(kind -> kind != own).toList();
        SupplyKind chosen = kinds.getValue();
        quiet = true;
        kinds.getItems().setAll(others);
        SupplyKind usual = own == SupplyKind.CHILLER ? SupplyKind.TAP : SupplyKind.CHILLER;
        kinds.setValue(chosen != null && chosen != own ? chosen : usual);
        quiet = false;
        request();
    }

    /** Requests again what was compared last. */
    void request() {
        SupplyKind kind = kinds.getValue();
        if (quiet || rig == null || kind == null) {
            return;
        }
        Asked compared = asked;
        latest.request((cancel, progress) -> OtherSupply.of(compared, kind, cancel), this::show, words -> {
            grid.getChildren().clear();
            message.setText(words);
        });
    }

    private void show(OtherSupply pair) {
        message.setText("");
        grid.getChildren().clear();
        String own = WaterWords.kind(rig.cooling().supply().kind());
        cells(0, "", WindowText.say("water.other.present", own), WaterWords.kind(pair.kind()));
        row(1, "water.other.flow", pair, t -> t.flowM3PerS() > 0 ? WaterWords.flow(t.flowM3PerS()) : none());
        row(2, "water.other.in", pair, t -> WaterWords.temperature(t.inletK()));
        row(3, "water.other.out", pair, t -> words(t.waterOutK(), WaterWords::temperature));
        row(4, "water.other.duty", pair, t -> WaterWords.power(t.dutyW()));
        row(5, "water.other.capacity", pair, t -> words(t.capacityW(), WaterWords::power));
        row(
                6,
                "water.other.margin",
                pair,
                t -> t.worst().map(WaterWords::margin).orElseGet(OtherSupplyView::none));
    }

    private void row(int row, String key, OtherSupply pair, Function<WaterTrial, String> figure) {
        cells(row, WindowText.say(key), figure.apply(pair.present()), figure.apply(pair.other()));
    }

    private void cells(int row, String name, String present, String other) {
        Label left = new Label(name);
        left.getStyleClass().add("figure-name");
        Label middle = new Label(present);
        Label right = new Label(other);
        for (Label label : List.of(middle, right)) {
            label.getStyleClass().add(row == 0 ? "block-title" : "figure");
            label.setWrapText(true);
        }
        if (row > 0) {
            left.setLabelFor(middle);
        }
        grid.addRow(row, left, middle, right);
        GridPane.setHgrow(middle, Priority.SOMETIMES);
    }

    private static String words(OptionalDouble value, DoubleFunction<String> written) {
        return value.isPresent() ? written.apply(value.getAsDouble()) : none();
    }

    private static String none() {
        return WindowText.say("water.other.none");
    }

    /** Kinds in words. */
    private static final class Words extends StringConverter<SupplyKind> {
        @Override
        public String toString(SupplyKind kind) {
            return kind == null ? "" : WaterWords.kind(kind);
        }

        @Override
        public SupplyKind fromString(String text) {
            return Arrays.stream(SupplyKind.values())
                    .filter(kind -> WaterWords.kind(kind).equals(text))
                    .findFirst()
                    .orElse(null);
        }
    }

    /**
     * A rig's supply beside one of another kind.
     *
     * @param present the rig as it is
     * @param other the same rig behind the other supply
     * @param kind the other supply's kind
     */
    private record OtherSupply(WaterTrial present, WaterTrial other, SupplyKind kind) {
        /** Works both out; the other supply has the figures that one begins with in the rig's form. */
        static OtherSupply of(Asked asked, SupplyKind kind, CancelToken cancel) {
            Rig rig = asked.rig();
            Rig changed = rig.withCooling(SupplyDefaults.of(kind, rig));
            return new OtherSupply(WaterTrial.of(asked, cancel), WaterTrial.of(asked.with(changed), cancel), kind);
        }
    }
}
