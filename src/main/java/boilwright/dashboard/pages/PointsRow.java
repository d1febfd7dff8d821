package boilwright.dashboard.pages;

import boilwright.dashboard.session.RigFiles;
import boilwright.dashboard.text.FormWords;
import boilwright.dashboard.text.WindowText;
import boilwright.errors.InputRefusedException;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.file.RigFields;
import boilwright.rig.file.TypedFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.TextArea;
import javafx.scene.input.KeyEvent;

/**
 * A curve or a table as text, a line for each point and commas between its quantities. All of it is taken over when the focus
 * leaves, so that it may be out of order meanwhile. Read with the words and the checks of the file reader.
 */
final class PointsRow extends FieldRow {
    private static final int MOST_LINES = 12;

    private final TextArea input = new TextArea();
    private final Button meant = new Button(WindowText.say("pages.slip.meant"));
    private final List<Field> columns;
    private String shown = "";

    PointsRow(PageContext context, String path) {
        super(context, path);
        columns = FieldCatalogue.children(path + "[]");
        input.setPromptText(names());
        input.addEventFilter(KeyEvent.KEY_PRESSED, TextRow::leaveWithTab);
        input.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take(Set.of());
            }
        });
        meant.getStyleClass().add("small");
        meant.setOnAction(event -> take(columns.stream().map(Field::path).collect(Collectors.toSet())));
        put(input);
    }

    /** What a line holds, in order. */
    private String names() {
        return columns.stream().map(FieldTexts::title).collect(Collectors.joining(", "));
    }

    private void take(Set<String> accepted) {
        String text = input.getText().strip();
        if (text.equals(shown)) {
            clear();
            return;
        }
        List<List<Double>> rows = new ArrayList<>();
        TypedFields typed = new TypedFields(accepted);
        for (String line : text.lines().filter(one -> !one.isBlank()).toList()) {
            String[] parts = line.split("[,;\\t]");
            if (parts.length != columns.size()) {
                clear();
                say(WindowText.say("pages.points.parts", line.strip(), names()));
                return;
            }
            List<Double> row = new ArrayList<>();
            for (int i = 0; i < parts.length; i++) {
                row.add(typed.quantity(editName(), columns.get(i).path(), parts[i].strip()));
            }
            rows.add(row);
        }
        try {
            typed.refuseFaults();
        } catch (InputRefusedException refusal) {
            refused(refusal);
            return;
        }
        clear();
        if (commit(fields -> fields.withRows(path(), rows))) {
            shown = text;
            taken(input, text);
        }
    }

    private void refused(InputRefusedException refusal) {
        clear();
        say(FormWords.of(refusal.faults().get(0)));
        if (RigFiles.onlySlips(refusal)) {
            getChildren().add(meant);
        }
    }

    private void clear() {
        say("");
        getChildren().remove(meant);
    }

    @Override
    void showValue(RigFields fields) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < fields.count(path()); i++) {
            String entry = path() + "[" + i + "].";
            lines.add(columns.stream()
                    .map(column -> fields.text(entry + column.name()).orElse(""))
                    .collect(Collectors.joining(", ")));
        }
        String text = String.join("\n", lines);
        if (!text.equals(shown)) {
            shown = text;
            input.setText(text);
            input.setPrefRowCount(Math.min(MOST_LINES, lines.size() + 1));
            taken(input, text);
            clear();
        }
    }

    @Override
    void focusControl() {
        input.requestFocus();
    }
}
