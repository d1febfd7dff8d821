package boilwright.dashboard.pages;

import boilwright.dashboard.session.FieldDefaults;
import boilwright.dashboard.text.WindowText;
import boilwright.rig.Field;
import boilwright.rig.FieldCatalogue;
import boilwright.rig.FieldTexts;
import boilwright.rig.file.RigFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/**
 * The plain form of one part of a rig, made from the field catalogue: a row for each field that is there, entries of lists one
 * under the other, and a menu with what may be added.
 */
final class PartForm extends VBox {
    private final PageContext context;
    private final String part;
    private final Set<String> elsewhere;
    private final List<FieldRow> rows = new ArrayList<>();
    private final Label message = new Label();
    private List<String> built = List.of();

    /**
     * @param context what pages work with
     * @param part path of the part
     * @param elsewhere paths that are edited in another place
     */
    PartForm(PageContext context, String part, Set<String> elsewhere) {
        this.context = context;
        this.part = part;
        this.elsewhere = elsewhere;
        getStyleClass().add("part-form");
        message.getStyleClass().add("field-message");
        message.setWrapText(true);
    }

    /** Shows what the rig has; builds the rows anew only when other fields are there than before. */
    void show(RigFields fields) {
        List<String> paths = everyPath(fields);
        if (getChildren().isEmpty() || !paths.equals(built)) {
            Optional<String> focused = focusedPath();
            built = paths;
            build(fields);
            rows.forEach(row -> row.show(fields));
            focused.flatMap(path ->
                            rows.stream().filter(row -> row.path().equals(path)).findFirst())
                    .ifPresent(FieldRow::focusControl);
        } else {
            rows.forEach(row -> row.show(fields));
        }
    }

    private Optional<String> focusedPath() {
        return rows.stream().filter(VBox::isFocusWithin).map(FieldRow::path).findFirst();
    }

    private List<String> everyPath(RigFields fields) {
        if (fields.has(part + "[0]")) {
            List<String> paths = new ArrayList<>();
            for (int i = 0; i < fields.count(part); i++) {
                paths.addAll(paths(fields, part + "[" + i + "]"));
            }
            return paths;
        }
        return paths(fields, part);
    }

    /**
     * Every path below a part that a row, a list or a part stands at now, in the order of the catalogue; with its value where
     * that is part of a title.
     */
    private static List<String> paths(RigFields fields, String part) {
        List<String> paths = new ArrayList<>();
        for (Field field : FieldCatalogue.children(part)) {
            String path = path(part, field);
            if (!fields.has(path)) {
                continue;
            }
            boolean inTitle = part.endsWith("]") && List.of("kind", "name").contains(field.name());
            paths.add(inTitle ? path + "=" + fields.text(path).orElse("") : path);
            if (field.kind() == Field.Kind.LIST && !FieldRows.isPoints(field)) {
                for (int i = 0; i < fields.count(path); i++) {
                    paths.addAll(paths(fields, path + "[" + i + "]"));
                }
            } else if (field.kind() == Field.Kind.OBJECT) {
                paths.addAll(paths(fields, path));
            }
        }
        return paths;
    }

    private void build(RigFields fields) {
        rows.clear();
        getChildren().clear();
        top(fields);
        getChildren().add(message);
        message.setText("");
        message.managedProperty().bind(message.textProperty().isNotEmpty());
    }

    /** A part that is a list shows its entries; one that is not there can only be added. */
    private void top(RigFields fields) {
        Field field = FieldCatalogue.find(part).orElseThrow();
        if (field.kind() == Field.Kind.LIST) {
            entries(fields, part, field, this);
        } else if (!fields.has(part) && FieldCatalogue.children(part).stream().anyMatch(Field::required)) {
            getChildren().add(adder("", List.of(field)));
        } else {
            part(fields, part, this);
            if (fields.has(part) && !field.required()) {
                getChildren().add(small("pages.form.take-away", field, () -> change(field, all -> all.without(part))));
            }
        }
    }

    private void part(RigFields fields, String at, VBox into) {
        Optional<String> kind = fields.text(at.isEmpty() ? "kind" : at + ".kind");
        List<Field> absent = new ArrayList<>();
        for (Field field : FieldCatalogue.children(at)) {
            String path = path(at, field);
            boolean belongs = kind.isEmpty() || field.belongsTo(kind.get());
            if (elsewhere.contains(FieldCatalogue.general(path)) || !belongs) {
                continue;
            }
            if (!fields.has(path)) {
                if (FieldDefaults.mayBeAdded(fields, path)) {
                    absent.add(field);
                }
            } else if (FieldRows.isPoints(field)) {
                into.getChildren().add(row(path, field));
            } else if (field.kind() == Field.Kind.LIST) {
                entries(fields, path, field, into);
            } else if (field.kind() == Field.Kind.OBJECT) {
                into.getChildren().add(block(fields, path, FieldTexts.title(field), Optional.of(field)));
            } else if (field.kind() != Field.Kind.INTEGER && !path.equals("guesses")) {
                into.getChildren().add(row(path, field));
            }
        }
        if (!absent.isEmpty()) {
            into.getChildren().add(adder(at, absent));
        }
    }

    private FieldRow row(String path, Field field) {
        FieldRow row = FieldRows.of(context, path);
        boolean removable = field.kind() == Field.Kind.QUANTITY || FieldRows.isGasMaterial(field);
        if (FieldDefaults.mayBeLeftOut(path) && removable) {
            row.append(small("pages.form.leave-out", field, () -> change(field, fields -> fields.without(path))));
        }
        rows.add(row);
        return row;
    }

    private void entries(RigFields fields, String list, Field field, VBox into) {
        List<String> kinds =
                FieldCatalogue.find(field.path() + ".kind").map(Field::choices).orElse(List.of());
        for (int i = 0; i < fields.count(list); i++) {
            String entry = list + "[" + i + "]";
            VBox block = block(fields, entry, FieldTexts.title(field) + ": " + name(fields, entry), Optional.empty());
            HBox line = new HBox(
                    small("pages.form.one-more", field, () -> change(field, all -> FieldDefaults.oneMore(all, entry))),
                    small(
                            "pages.form.take-away",
                            field,
                            () -> change(field, all -> FieldDefaults.takenAway(all, entry))));
            if (!kinds.isEmpty() && i > 0) {
                line.getChildren()
                        .add(1, small("pages.form.earlier", field, () -> change(field, all -> all.earlier(entry))));
            }
            line.getStyleClass().add("entry-actions");
            block.getChildren().add(line);
            into.getChildren().add(block);
        }
        if (!kinds.isEmpty()) {
            into.getChildren().add(kindAdder(list, field, kinds));
        }
    }

    /** What an entry is called: its name, or its number and its kind. */
    private static String name(RigFields fields, String entry) {
        int index = Integer.parseInt(entry.substring(entry.lastIndexOf('[') + 1, entry.length() - 1));
        String number = Integer.toString(index + 1);
        return fields.text(entry + ".name")
                .or(() -> fields.text(entry + ".kind").map(kind -> number + ", " + FieldRows.choiceWord(kind)))
                .orElse(number);
    }

    /** Adds an entry of any kind at the end of a list, also of an empty one. */
    private MenuButton kindAdder(String list, Field field, List<String> kinds) {
        MenuButton button = new MenuButton(WindowText.say("pages.form.add-to", FieldTexts.title(field)));
        button.setId("add-" + list);
        button.getStyleClass().add("small");
        for (String kind : kinds) {
            MenuItem item = new MenuItem(FieldRows.choiceWord(kind));
            item.setOnAction(event -> change(field, fields -> FieldDefaults.newEntry(fields, list, kind)));
            button.getItems().add(item);
        }
        return button;
    }

    private VBox block(RigFields fields, String path, String title, Optional<Field> optional) {
        Label heading = new Label(title);
        heading.getStyleClass().add("block-title");
        VBox block = new VBox(heading);
        block.getStyleClass().add("form-block");
        part(fields, path, block);
        optional.filter(field -> !field.required())
                .ifPresent(field -> block.getChildren()
                        .add(small("pages.form.take-away", field, () -> change(field, all -> all.without(path)))));
        return block;
    }

    private MenuButton adder(String at, List<Field> absent) {
        MenuButton button = new MenuButton(WindowText.say("pages.form.add"));
        button.setId("add-" + at);
        button.getStyleClass().add("small");
        for (Field field : absent) {
            MenuItem item = new MenuItem(FieldTexts.title(field));
            item.setOnAction(event -> change(field, fields -> FieldDefaults.added(fields, path(at, field))));
            button.getItems().add(item);
        }
        return button;
    }

    private Button small(String key, Field field, Runnable what) {
        Button button = new Button(WindowText.say(key));
        button.getStyleClass().addAll("small", "flat");
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip(WindowText.say(key + ".explanation", FieldTexts.title(field))));
        button.setAccessibleText(WindowText.say(key) + ", " + FieldTexts.title(field));
        button.setOnAction(event -> what.run());
        return button;
    }

    private void change(Field field, UnaryOperator<RigFields> how) {
        boolean accepted = context.change(FieldTexts.title(field), how);
        message.setText(accepted ? "" : context.refusal());
    }

    private static String path(String part, Field field) {
        return part.isEmpty() ? field.name() : part + "." + field.name();
    }
}
