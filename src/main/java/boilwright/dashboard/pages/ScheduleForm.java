package boilwright.dashboard.pages;

import boilwright.dashboard.session.FieldDefaults;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.collections.FXCollections;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The schedule: a line for each level, with when it begins and what it is. */
final class ScheduleForm extends VBox {
    private static final String POWER = "power";
    private static final String HOLD = "holdOil";

    private final PageContext context;
    private final List<FieldRow> rows = new ArrayList<>();
    private final Label message = new Label();
    private List<String> built = List.of();

    ScheduleForm(PageContext context) {
        this.context = context;
        getStyleClass().add("schedule-form");
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
        message.managedProperty().bind(message.textProperty().isNotEmpty());
    }

    void show(RigFields fields) {
        List<String> shape = new ArrayList<>();
        for (int i = 0; i < fields.count("schedule"); i++) {
            shape.add(fields.has(step(i) + "." + HOLD) ? HOLD : POWER);
        }
        if (!shape.equals(built)) {
            built = shape;
            build(shape);
        }
        rows.forEach(row -> row.show(fields));
    }

    private void build(List<String> shape) {
        rows.clear();
        getChildren().clear();
        for (int i = 0; i < shape.size(); i++) {
            getChildren().add(line(i, shape.get(i), shape.size()));
        }
        message.setText("");
        getChildren().add(message);
    }

    private FlowPane line(int index, String sets, int count) {
        FieldRow at = FieldRows.of(context, step(index) + ".at");
        FieldRow level = FieldRows.of(context, step(index) + "." + sets);
        at.withoutTitle();
        level.withoutTitle();
        rows.add(at);
        rows.add(level);
        ComboBox<String> kind = kind(index, sets);
        Button more =
                button("pages.form.one-more", index, () -> change(all -> FieldDefaults.oneMore(all, step(index))));
        Button less = button("pages.form.take-away", index, () -> change(all -> all.without(step(index))));
        less.setDisable(count == 1);
        Label from = new Label(WindowText.say("pages.schedule.from"));
        from.setMinWidth(USE_PREF_SIZE);
        HBox when = new HBox(from, at, kind);
        HBox what = new HBox(level, more, less);
        when.getStyleClass().add("schedule-line");
        what.getStyleClass().add("schedule-line");
        FlowPane line = new FlowPane(when, what);
        line.getStyleClass().add("schedule-step");
        return line;
    }

    private ComboBox<String> kind(int index, String what) {
        ComboBox<String> kind = new ComboBox<>(FXCollections.observableArrayList(POWER, HOLD));
        kind.setValue(what);
        kind.setConverter(new StringConverter<>() {
            @Override
            public String toString(String id) {
                return title(id);
            }

            @Override
            public String fromString(String text) {
                return title(HOLD).equals(text) ? HOLD : POWER;
            }
        });
        kind.setAccessibleText(WindowText.say("pages.schedule.kind", Integer.toString(index + 1)));
        kind.setMinWidth(USE_PREF_SIZE);
        kind.setOnAction(event -> {
            String now = kind.getValue();
            if (!now.equals(what)) {
                double start = FieldDefaults.typical(
                        FieldCatalogue.find("schedule[]." + now).orElseThrow());
                change(all -> all.without(step(index) + "." + what).with(step(index) + "." + now, start));
            }
        });
        return kind;
    }

    private static String title(String id) {
        return FieldTexts.title(FieldCatalogue.find("schedule[]." + id).orElseThrow());
    }

    private Button button(String key, int index, Runnable what) {
        Button button = new Button(WindowText.say(key));
        button.getStyleClass().addAll("small", "flat");
        button.setMinWidth(USE_PREF_SIZE);
        button.setAccessibleText(
                WindowText.say(key) + ", " + WindowText.say("pages.schedule.step", Integer.toString(index + 1)));
        button.setOnAction(event -> what.run());
        return button;
    }

    private void change(UnaryOperator<RigFields> how) {
        boolean accepted = context.change(WindowText.say("pages.schedule"), how);
        message.setText(accepted ? "" : context.refusal());
    }

    private static String step(int index) {
        return "schedule[" + index + "]";
    }
}
