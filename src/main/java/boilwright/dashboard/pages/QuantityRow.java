package boilwright.dashboard.pages;

import boilwright.dashboard.text.WindowText;
import boilwright.errors.Message;
import boilwright.errors.MessageKey;
import boilwright.rig.file.RigEdit;
import boilwright.rig.file.RigFields;
import boilwright.units.QuantityWriter;
import boilwright.units.UnitSpelling;
import boilwright.units.UnitTable;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;

/**
 * A field that holds a quantity, written with its unit; a menu rewrites it in another one. Read with the words and the checks
 * of the file reader; a likely slip can be put right or confirmed.
 */
final class QuantityRow extends FieldRow {
    private final TextField input = new TextField();
    private final MenuButton units = new MenuButton();
    private final HBox slip = new HBox();
    private String shown = "";
    private OptionalDouble value = OptionalDouble.empty();
    /** What is being handed to the rig just now. */
    private Optional<String> typed = Optional.empty();

    QuantityRow(PageContext context, String path) {
        super(context, path);
        input.setOnAction(event -> take(Set.of()));
        input.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take(Set.of());
            }
        });
        put(input);
        units();
        slip.getStyleClass().add("slip");
    }

    /** The other units; there is nothing to choose for a plain number. */
    private void units() {
        for (UnitSpelling unit : UnitTable.accepted(field().dimension().orElseThrow())) {
            if (!unit.isPlain()) {
                MenuItem item = new MenuItem(unit.text());
                item.setOnAction(event -> rewrite(unit));
                units.getItems().add(item);
            }
        }
        units.getStyleClass().addAll("small", "flat", "units");
        units.setFocusTraversable(false);
        units.setAccessibleText(WindowText.say("pages.units", editName()));
        if (units.getItems().size() > 1) {
            append(units);
        }
    }

    private void rewrite(UnitSpelling unit) {
        value.ifPresent(si -> keep(QuantityWriter.exact(si, unit)));
    }

    private void keep(String text) {
        shown = text;
        input.setText(text);
        taken(input, text);
        clear();
    }

    private void clear() {
        say("");
        getChildren().remove(slip);
    }

    private void take(Set<String> accepted) {
        String text = input.getText().strip();
        if (text.equals(shown)) {
            clear();
            return;
        }
        getChildren().remove(slip);
        typed = Optional.of(text);
        boolean taken = context().change(editName(), List.of(RigEdit.of(path(), text)), accepted);
        typed = Optional.empty();
        if (taken) {
            keep(text);
        } else {
            refused(context().session().refusalProperty().get());
        }
    }

    private void refused(List<Message> faults) {
        say(context().refusal());
        slip.getChildren().clear();
        Message fault = faults.get(0);
        boolean mayBeMeant =
                fault.key() == MessageKey.RIG_FIELD_SLIP || fault.key() == MessageKey.RIG_FIELD_QUANTITY_SLIP;
        if (mayBeMeant) {
            slip.getChildren().add(button(WindowText.say("pages.slip.meant"), () -> take(Set.of(path()))));
        }
        boolean guessed = fault.key() == MessageKey.RIG_FIELD_SLIP || fault.key() == MessageKey.RIG_FIELD_RANGE_SLIP;
        if (guessed) {
            // What follows in brackets explains the likely meaning; it is no part of it.
            String likely = fault.arguments().get(3).replaceAll("\\s*\\(.*", "").replace("\"", "");
            slip.getChildren().add(button(WindowText.say("pages.slip.likely", likely), () -> {
                input.setText(likely);
                take(Set.of());
            }));
        }
        if (!slip.getChildren().isEmpty()) {
            getChildren().add(slip);
        }
    }

    private static Button button(String title, Runnable what) {
        Button button = new Button(title);
        button.getStyleClass().add("small");
        button.setOnAction(event -> what.run());
        return button;
    }

    @Override
    void showValue(RigFields fields) {
        OptionalDouble before = value;
        value = fields.quantity(path());
        // what was typed says the same as the rig's own spelling, and stays
        if (typed.isEmpty() && !value.equals(before)) {
            keep(fields.text(path()).orElse(""));
        }
    }

    @Override
    void focusControl() {
        input.requestFocus();
    }
}
