package boilwright.dashboard.companion;

import boilwright.companion.Outcome;
import boilwright.companion.ReadingKind;
import boilwright.dashboard.text.WindowText;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.EnumMap;
import java.util.Map;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** Where readings are typed: what, how much, in which unit, Enter. */
final class ReadingRow extends VBox {
    /** Takes a reading. */
    @FunctionalInterface
    interface Taker {
        Outcome take(ReadingKind kind, String text, boolean allTheSame);
    }

    private final ComboBox<ReadingKind> kind = new ComboBox<>();
    private final TextField amount = new TextField();
    private final ComboBox<String> unit = new ComboBox<>();
    private final Label message = Says.label("companion-message");
    private final Map<ReadingKind, String> units = new EnumMap<>(ReadingKind.class);
    private final Taker taker;
    private final Runnable taken;
    /** What was asked about: the same text once more means it. */
    private String doubtful = "";

    /**
     * @param taker takes what was typed
     * @param taken runs after a reading was taken
     */
    ReadingRow(Taker taker, Runnable taken) {
        this.taker = taker;
        this.taken = taken;
        getStyleClass().add("companion-reading");
        kind.setId("companion-kind");
        amount.setId("companion-amount");
        unit.setId("companion-unit");
        message.setId("companion-reading-message");
        kind.getItems().setAll(ReadingKind.values());
        kind.setConverter(new StringConverter<>() {
            @Override
            public String toString(ReadingKind one) {
                return one == null ? "" : one.title();
            }

            @Override
            public ReadingKind fromString(String text) {
                throw new UnsupportedOperationException("chosen, not typed");
            }
        });
        kind.valueProperty().addListener((property, before, now) -> suit(now));
        kind.setValue(ReadingKind.FORELINE);
        unit.valueProperty().addListener((property, before, now) -> {
            if (now != null) {
                units.put(kind.getValue(), now);
            }
        });
        kind.setAccessibleText(WindowText.say("companion.reading.what"));
        amount.setAccessibleText(WindowText.say("companion.reading.amount"));
        unit.setAccessibleText(WindowText.say("companion.reading.unit"));
        amount.setPromptText(WindowText.say("companion.reading.prompt"));
        amount.addEventHandler(KeyEvent.KEY_PRESSED, this::keys);
        amount.setPrefColumnCount(6);
        HBox.setHgrow(amount, Priority.ALWAYS);
        HBox row = new HBox(kind, amount, unit);
        row.getStyleClass().add("companion-reading-row");
        row.setAlignment(Pos.CENTER_LEFT);
        Says.show(message, "");
        getChildren().addAll(row, message);
    }

    private void suit(ReadingKind now) {
        unit.getItems()
                .setAll(UnitTable.accepted(now.dimension()).stream()
                        .map(UnitSpelling::text)
                        .distinct()
                        .toList());
        unit.setValue(units.getOrDefault(now, now.unit()));
        Says.show(message, "");
    }

    private void keys(KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            take();
            event.consume();
        } else if (event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.UP) {
            int next = kind.getSelectionModel().getSelectedIndex() + (event.getCode() == KeyCode.DOWN ? 1 : -1);
            if (next >= 0 && next < kind.getItems().size()) {
                kind.getSelectionModel().select(next);
            }
            event.consume();
        }
    }

    private void take() {
        String typed = amount.getText().strip();
        // a bare number is in the unit that stands beside it
        String text = typed.matches(".*\\p{L}.*|.*%.*") || typed.isEmpty() ? typed : typed + " " + unit.getValue();
        if (typed.matches("[-+]?[0-9.]+[eE][-+]?[0-9]+")) {
            text = typed + " " + unit.getValue();
        }
        Outcome outcome = taker.take(kind.getValue(), text, !doubtful.isEmpty() && doubtful.equals(text));
        doubtful = outcome.kind() == Outcome.Kind.WARNED ? text : "";
        Says.show(message, Marks.marked(outcome));
        if (outcome.isDone()) {
            amount.clear();
            taken.run();
        }
    }

    /** Puts the cursor where the next reading is typed. */
    void begin() {
        amount.requestFocus();
        amount.selectAll();
    }
}
