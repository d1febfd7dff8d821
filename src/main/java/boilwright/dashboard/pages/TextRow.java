package boilwright.dashboard.pages;

import boilwright.dashboard.session.FieldDefaults;
import boilwright.rig.Field;
import boilwright.rig.file.RigFields;
import java.util.Arrays;
import java.util.List;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A field of free text, or a list of short texts parted by commas. Taken over with Enter or when the focus leaves. */
final class TextRow extends FieldRow {
    private final TextInputControl input;
    private String shown = "";

    TextRow(PageContext context, String path) {
        super(context, path);
        if (path.equals("note")) {
            TextArea area = new TextArea();
            area.setWrapText(true);
            area.setPrefRowCount(3);
            area.addEventFilter(KeyEvent.KEY_PRESSED, TextRow::leaveWithTab);
            input = area;
        } else {
            TextField line = new TextField();
            line.setOnAction(event -> take());
            input = line;
        }
        input.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take();
            }
        });
        put(input);
    }

    /** Tab leads on, as everywhere else in the form, instead of going into the text. */
    static void leaveWithTab(KeyEvent event) {
        if (event.getCode() == KeyCode.TAB && !event.isControlDown()) {
            event.consume();
            ((TextArea) event.getSource())
                    .fireEvent(new KeyEvent(
                            event.getEventType(),
                            event.getCharacter(),
                            event.getText(),
                            event.getCode(),
                            event.isShiftDown(),
                            true,
                            event.isAltDown(),
                            event.isMetaDown()));
        }
    }

    private void take() {
        String text = input.getText() == null ? "" : input.getText().strip();
        if (text.equals(shown)) {
            return;
        }
        boolean accepted = commit(fields -> changed(fields, text));
        if (accepted) {
            shown = text;
            taken(input, text);
        }
    }

    private RigFields changed(RigFields fields, String text) {
        if (field().kind() == Field.Kind.TEXT_LIST) {
            List<String> texts = Arrays.stream(text.split(","))
                    .map(String::strip)
                    .filter(one -> !one.isEmpty())
                    .toList();
            return fields.with(path(), texts);
        }
        return text.isEmpty() && !field().required()
                ? FieldDefaults.takenAway(fields, path())
                : fields.with(path(), text);
    }

    @Override
    void showValue(RigFields fields) {
        String text = field().kind() == Field.Kind.TEXT_LIST
                ? String.join(", ", fields.texts(path()))
                : fields.text(path()).orElse("");
        if (!text.equals(shown) || input.getText().isEmpty()) {
            shown = text;
            input.setText(text);
            taken(input, text);
            say("");
        }
    }

    @Override
    void focusControl() {
        input.requestFocus();
    }
}
