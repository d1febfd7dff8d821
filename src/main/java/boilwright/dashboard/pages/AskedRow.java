package boilwright.dashboard.pages;

import boilwright.dashboard.parts.ChoiceBoxes;
import boilwright.dashboard.text.WindowText;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One line of a form that is filled in from nothing: what is asked, where to answer, and what is wrong with the answer. */
final class AskedRow extends VBox {
    private final String key;
    private final Label title = new Label();
    private final Label message = new Label();
    private final Control control;

    private AskedRow(String key, Control control) {
        this.key = key;
        this.control = control;
        getStyleClass().add("field-row");
        setId("new-" + key);
        title.setText(WindowText.say("pages.new." + key));
        title.getStyleClass().add("field-title");
        title.setWrapText(true);
        title.setLabelFor(control);
        control.setAccessibleText(title.getText());
        control.setMaxWidth(Double.MAX_VALUE);
        HBox line = new HBox(title, control);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("field-line");
        HBox.setHgrow(control, Priority.ALWAYS);
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
        getChildren().addAll(line, message);
    }

    /** A line answered in free text. */
    static AskedRow typed(String key, String example) {
        TextField field = new TextField();
        field.setPromptText(example);
        return new AskedRow(key, field);
    }

    /** A line answered with one of some words; the first is chosen, unless none need be. */
    static AskedRow chosen(String key, List<String> ids, Function<String, String> words, boolean needed) {
        List<String> choices = new ArrayList<>(ids);
        if (!needed) {
            choices.add(0, "");
        }
        ComboBox<String> box =
                ChoiceBoxes.of(choices, id -> id.isEmpty() ? WindowText.say("pages.new.not-known") : words.apply(id));
        String[] chosen = {choices.get(0)};
        box.setValue(chosen[0]);
        ChoiceBoxes.onChosen(box, id -> {
            if (id == null) {
                box.setValue(chosen[0]);
            } else {
                chosen[0] = id;
            }
        });
        return new AskedRow(key, box);
    }

    /** What was answered; empty for nothing. */
    String answer() {
        if (control instanceof ComboBox<?> box) {
            return String.valueOf(box.getValue());
        }
        String text = ((TextField) control).getText();
        return text == null ? "" : text.strip();
    }

    /** Says what is wrong; nothing takes it away. */
    void say(String words) {
        message.setText(words);
    }

    /** What the line asks. */
    String title() {
        return title.getText();
    }

    /** Its name within the form. */
    String key() {
        return key;
    }

    /** Puts the focus where it is answered. */
    void focusControl() {
        control.requestFocus();
    }
}
